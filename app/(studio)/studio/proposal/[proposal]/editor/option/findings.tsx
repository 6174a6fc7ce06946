'use client'
import { useState } from 'react'
import type { PotState } from '@/lib/proposal/design/told'
import { Box, boxId, Does } from '../box'
import { PutBack } from '../removal/put-back'
import { useRemoval } from '../removal/use-removal'

type Props = {
	readonly state: PotState
	readonly of: string
	readonly option: string
	/** Where it stands on the desk. */
	readonly path: string
	/** A note lets a finding stand. */
	readonly onNote: (check: string, note: string) => void
}

/** What the checks say of one pot: the reason, what would mend it, and room to let it stand with a note. */
export function Findings({ state: { container, says, weighs, open, overruled }, of, option, path, onNote }: Props) {
	const { takeOut, goTo } = useRemoval()
	const keep = (check: string, note: string) => {
		onNote(check, note)
		goTo(`${path}.${check}`)
	}
	return (
		<div id={boxId(path)} tabIndex={-1} className="mt-1 text-sm">
			<p className="text-soft">
				{says} {weighs}.
			</p>
			<PutBack list={`notes.${option}.${container}`} />
			<ul>
				{open.map((finding) => (
					<li key={finding.key} className="border-t border-line py-1">
						<span className={finding.weight === 'look again' ? 'font-semibold text-warn' : ''}>{finding.says}</span>{' '}
						{finding.mend}
						<LetStand of={`${finding.says} ${of}`} onNote={(note) => keep(finding.key, note)} />
					</li>
				))}
				{overruled.map(({ key, says: found, note }) => (
					<li key={key} className="border-t border-line py-1 text-soft">
						<s>{found}</s> Let stand: {note}{' '}
						<Does at={`${path}.${key}`} onClick={() => takeOut({ is: 'note', option, container, check: key })}>
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
