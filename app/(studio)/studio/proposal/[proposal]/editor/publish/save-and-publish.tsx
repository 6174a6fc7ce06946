'use client'
import { useRef, useState } from 'react'
import { v7 } from 'uuid'
import type { Recipient } from '@/lib/proposal/desk/publish-words'
import type { Stop } from '@/lib/proposal/desk/stops'
import { publish } from '../../actions'
import type { Saving } from '../state/use-saving'
import { Stops, stopsInWords } from './stops'

/** Where saving and publishing stand on the page. */
export const publishId = 'publish'

type Props = {
	readonly proposal: string
	readonly saving: Saving
	/** What stops publishing. */
	readonly stops: readonly Stop[]
	readonly recipients: readonly Recipient[]
	readonly clientPage: string
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
	const { proposal, saving, stops, recipients, clientPage, mayPublish, isUnsaved, publishing, onSave } = props
	const canPublish = mayPublish && stops.length === 0
	const form = useRef<HTMLFormElement>(null)
	const toggle = useRef<HTMLButtonElement>(null)
	const [isAsked, setIsAsked] = useState(false)
	const [sending, setSending] = useState({ version: 0, once: '' })
	const publishAll = async () => {
		setIsAsked(false)
		toggle.current?.focus()
		const now = await onSave()
		if (now === undefined) return
		setSending({ version: now, once: v7() })
		// The form has to hold the new version before it is sent.
		setTimeout(() => form.current?.requestSubmit(), 0)
	}
	return (
		<section id={publishId} aria-label="Save and publish" className="mt-6 border-t-2 border-ink pt-3">
			{(mayPublish || stops.length > 0) && <Stops stops={stops} recipients={recipients} clientPage={clientPage} />}
			<p className="sr-only" aria-live="polite">
				{mayPublish && stopsInWords(stops)}
			</p>
			<p role="status" className="mt-3 min-h-6 font-semibold">
				{isUnsaved && (saving.is === 'at rest' || saving.is === 'saved') ? 'Not saved yet.' : says[saving.is]}
			</p>
			<div className="mt-1 flex flex-wrap gap-3">
				<button
					type="button"
					className="act"
					onClick={() => saving.is !== 'saving' && void onSave()}
					aria-disabled={saving.is === 'saving'}
				>
					Save the draft
				</button>
				{canPublish && (
					<button
						ref={toggle}
						type="button"
						className="act"
						aria-expanded={isAsked}
						onClick={() => setIsAsked(!isAsked)}
					>
						Publish to the client…
					</button>
				)}
			</div>
			{isAsked && canPublish && (
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
