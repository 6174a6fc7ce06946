'use client'
import { useCallback, useState } from 'react'
import type { DraftText } from '@/lib/forms/draft-form'

export type Saving =
	| { readonly is: 'at rest' | 'saving' | 'saved' | 'out of reach' | 'signed out' | 'wrong' }
	| { readonly is: 'saved elsewhere'; readonly version: number; readonly theirs: DraftText }

type Reply = { readonly version: number; readonly theirs: DraftText }

/** Keeps the draft under the version that was read; what was saved elsewhere meanwhile comes back beside it. */
export function useSaving(path: string, firstVersion: number) {
	const [version, setVersion] = useState(firstVersion)
	const [saving, setSaving] = useState<Saving>({ is: 'at rest' })
	/** @returns the version that now stands, or undefined when it was not saved */
	const save = useCallback(
		async (draft: DraftText, over: number): Promise<number | undefined> => {
			setSaving({ is: 'saving' })
			try {
				const response = await fetch(path, {
					method: 'POST',
					headers: { 'content-type': 'application/json' },
					body: JSON.stringify({ version: over, draft }),
				})
				if (response.status !== 200 && response.status !== 409) {
					setSaving({ is: response.status === 401 ? 'signed out' : response.status === 422 ? 'wrong' : 'out of reach' })
					return undefined
				}
				const reply: Reply = await response.json()
				if (response.status === 409) {
					setSaving({ is: 'saved elsewhere', version: reply.version, theirs: reply.theirs })
					return undefined
				}
				setVersion(reply.version)
				setSaving({ is: 'saved' })
				return reply.version
			} catch {
				setSaving({ is: 'out of reach' })
				return undefined
			}
		},
		[path],
	)
	return { version, saving, save, setVersion, setSaving }
}
