'use client'
import { useRef, useState } from 'react'
import { v7 } from 'uuid'
import { publish } from '../actions'
import type { Saving } from './use-saving'

type Props = {
	readonly proposal: string
	readonly saving: Saving
	/** What stops publishing, in sentences. */
	readonly wrong: readonly string[]
	readonly mayPublish: boolean
	readonly isUnsaved: boolean
	/** What publishing does, in words. */
	readonly publishing: string
	readonly onSave: () => Promise<number | undefined>
}

const says: Record<Saving['is'], string> = {
	'at rest': '',
	saving: 'Saving…',
	saved: 'Saved.',
	'out of reach': 'Not saved: the server is out of reach. What you typed is still here; try again.',
	'signed out':
		'Not saved: you are signed out. Sign in in another window, then save again; what you typed is still here.',
	wrong: 'Not saved: something below cannot be kept as it is.',
	'saved elsewhere': 'Not saved: see both texts.',
}

/** What stops publishing, and the two things to do with a draft. Publishing says first what it does, and saves. */
export function SaveAndPublish(props: Props) {
	const { proposal, saving, wrong, mayPublish, isUnsaved, publishing, onSave } = props
	const form = useRef<HTMLFormElement>(null)
	const [isAsked, setIsAsked] = useState(false)
	const [sending, setSending] = useState({ version: 0, once: '' })
	const publishAll = async () => {
		setIsAsked(false)
		const now = await onSave()
		if (now === undefined) return
		setSending({ version: now, once: v7() })
		// The form has to hold the new version before it is sent.
		setTimeout(() => form.current?.requestSubmit(), 0)
	}
	return (
		<section aria-label="Save and publish" className="mt-6 border-t-2 border-ink pt-3">
			{wrong.length > 0 && (
				<>
					<h2 className="text-lg">Before it can be published</h2>
					<ul className="mt-1 list-disc ps-5">
						{[...new Set(wrong)].map((words) => (
							<li key={words}>{words}</li>
						))}
					</ul>
				</>
			)}
			<p role="status" className="mt-3 min-h-6 font-semibold">
				{isUnsaved && (saving.is === 'at rest' || saving.is === 'saved') ? 'Not saved yet.' : says[saving.is]}
			</p>
			<div className="mt-1 flex flex-wrap gap-3">
				<button type="button" className="act" onClick={() => void onSave()} disabled={saving.is === 'saving'}>
					Save the draft
				</button>
				{mayPublish && wrong.length === 0 && (
					<button type="button" className="act" aria-expanded={isAsked} onClick={() => setIsAsked(!isAsked)}>
						Publish to the client…
					</button>
				)}
			</div>
			{isAsked && mayPublish && wrong.length === 0 && (
				<div className="said mt-3">
					<p>{publishing}</p>
					<p className="mt-1">What is published is never altered: a correction is a new revision.</p>
					<button type="button" className="act first mt-3" onClick={() => void publishAll()}>
						Publish
					</button>
				</div>
			)}
			<form ref={form} action={publish} hidden>
				<input type="hidden" name="once" value={sending.once} />
				<input type="hidden" name="proposal" value={proposal} />
				<input type="hidden" name="version" value={sending.version} />
			</form>
		</section>
	)
}
