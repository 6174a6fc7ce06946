'use client'
import { type SetStateAction, useCallback, useEffect, useRef, useState } from 'react'
import type { DraftText } from '@/lib/forms/draft-form'

export type Saving =
	| { readonly is: 'at rest' | 'saving' | 'saved' | 'out of reach' | 'signed out' | 'wrong' }
	| { readonly is: 'saved elsewhere'; readonly version: number; readonly theirs: DraftText }

type Reply = { readonly version: number; readonly theirs: DraftText }
type Sent = Saving & { readonly kept?: number }

async function send(path: string, draft: DraftText, version: number): Promise<Sent> {
	try {
		const response = await fetch(path, {
			method: 'POST',
			headers: { 'content-type': 'application/json' },
			body: JSON.stringify({ version, draft }),
		})
		if (response.status === 401) return { is: 'signed out' }
		if (response.status === 422) return { is: 'wrong' }
		if (response.status !== 200 && response.status !== 409) return { is: 'out of reach' }
		const reply: Reply = await response.json()
		if (response.status === 200) return { is: 'saved', kept: reply.version }
		return { is: 'saved elsewhere', version: reply.version, theirs: reply.theirs }
	} catch {
		return { is: 'out of reach' }
	}
}

/** How long after the last change it is saved by itself; null where a person has to act first. */
const pauseMs: Record<Saving['is'], number | null> = {
	'at rest': 3000,
	saved: 3000,
	'out of reach': 10_000,
	saving: null,
	'signed out': null,
	wrong: null,
	'saved elsewhere': null,
}

/**
 * Holds the draft and keeps it under the version that was read: by itself soon after the last change, or when asked.
 * What was saved elsewhere meanwhile comes back beside it. Leaving with something unsaved asks first.
 */
export function useSaving(path: string, first: { readonly version: number; readonly draft: DraftText }) {
	const [draft, setDraft] = useState(first.draft)
	const [kept, setKept] = useState(first.draft)
	const [saving, setSaving] = useState<Saving>({ is: 'at rest' })
	const version = useRef(first.version)
	const last = useRef<Promise<unknown>>(Promise.resolve())
	const isUnsaved = draft !== kept

	/** One after the other, so that no save meets another of this window. @returns the version that now stands, or undefined */
	const save = useCallback(
		(over?: number): Promise<number | undefined> => {
			const run = async () => {
				version.current = over ?? version.current
				setSaving({ is: 'saving' })
				const sent = await send(path, draft, version.current)
				setSaving(sent)
				if (sent.kept === undefined) return undefined
				version.current = sent.kept
				setKept(draft)
				return sent.kept
			}
			const next = last.current.then(run)
			last.current = next
			return next
		},
		[path, draft],
	)
	/** A draft, or what is to be made of the one that stands when an answer comes late. */
	const change = (next: SetStateAction<DraftText>) => {
		setDraft(next)
		setSaving((now) => (now.is === 'saved elsewhere' ? now : { is: 'at rest' }))
	}
	const take = (theirs: DraftText, their: number) => {
		version.current = their
		setDraft(theirs)
		setKept(theirs)
		setSaving({ is: 'saved' })
	}
	useEffect(() => {
		const waitMs = isUnsaved ? pauseMs[saving.is] : null
		if (waitMs === null) return
		const timer = setTimeout(() => void save(), waitMs)
		return () => clearTimeout(timer)
	}, [isUnsaved, saving.is, save])
	useEffect(() => {
		if (!isUnsaved) return
		const ask = (event: BeforeUnloadEvent) => event.preventDefault()
		addEventListener('beforeunload', ask)
		return () => removeEventListener('beforeunload', ask)
	}, [isUnsaved])
	return { draft, saving, isUnsaved, save, change, take }
}
