'use client'
import { useState } from 'react'
import type { PotState } from '@/lib/proposal/design/told'
import { Box, Does } from '../box'

type Props = {
	readonly state: PotState
	readonly of: string
	/** A note lets a finding stand; null takes that back. */
	readonly onNote: (check: string, note: string | null) => void
}

/** What the checks say of one pot: the reason, what would mend it, and room to let it stand with a note. */
export function Findings({ state: { says, weighs, open, overruled }, of, onNote }: Props) {
	return (
		<div className="mt-1 text-sm">
			<p className="text-soft">
				{says} {weighs}.
			</p>
			<ul>
				{open.map((finding) => (
					<li key={finding.key} className="border-t border-line py-1">
						<span className={finding.weight === 'look again' ? 'font-semibold text-warn' : ''}>{finding.says}</span>{' '}
						{finding.mend}
						<LetStand of={`${finding.says} ${of}`} onNote={(note) => onNote(finding.key, note)} />
					</li>
				))}
				{overruled.map(({ key, says: found, note }) => (
					<li key={key} className="border-t border-line py-1 text-soft">
						<s>{found}</s> Let stand: {note}{' '}
						<Does onClick={() => onNote(key, null)}>
							Look at it again<span className="sr-only">: {found}</span>
						</Does>
					</li>
				))}
			</ul>
		</div>
	)
}

function LetStand({ of, onNote }: { readonly of: string; readonly onNote: (note: string) => void }) {
	const [note, setNote] = useState('')
	return (
		<details>
			<summary className="does inline-block">
				Let it stand<span className="sr-only">: {of}</span>
			</summary>
			<div className="flex items-end gap-3">
				<div className="grow">
					<Box label="Why it may stand" value={note} onChange={setNote} />
				</div>
				<button type="button" className="act" disabled={note.trim() === ''} onClick={() => onNote(note.trim())}>
					Keep the note
				</button>
			</div>
		</details>
	)
}
