'use client'
import { useEffect, useRef } from 'react'
import type { DraftText } from '@/lib/forms/draft-form'
import type { Pots } from '@/lib/proposal/desk/removed/removed'
import { freshKey } from '../known'
import { useDesign } from './use-design'

type On = {
	readonly base: string
	readonly draft: DraftText
	readonly change: (next: DraftText | ((now: DraftText) => DraftText)) => void
	/** Puts other things into the containers of a palette; what was there can be put back. */
	readonly replace: (now: DraftText, option: string, pots: Pots) => void
	readonly goTo: (path: string) => void
}

export const mostOptions = 4

const nameAt = (index: number) => `options.${index}.name`

/** What is done to the palettes as wholes: proposed, added, filled by the server, noted. */
export function useOptions({ base, draft, change, replace, goTo }: On) {
	const { designing, propose, grow, standIns, tell } = useDesign(base)
	const latest = useRef(draft)
	useEffect(() => {
		latest.current = draft
	})
	const putIn = async (option: string, recipe: string | null) => {
		const answer = await grow(draft, option, recipe)
		if (answer !== undefined) replace(latest.current, option, answer.option.pots)
	}
	const findOthers = async (material: string, container: string | null) =>
		(await standIns(draft, material, container))?.substitutes
	const proposeAll = async () => {
		if (designing.isAsking) return
		goTo(nameAt(draft.options.length))
		const answer = await propose(draft)
		if (answer === undefined) return
		change((now) => ({ ...now, options: [...now.options, ...answer.options].slice(0, mostOptions) }))
		if (answer.short !== null) tell(answer.short)
	}
	const add = (like?: DraftText['options'][number]) => {
		const { options } = draft
		if (options.length >= mostOptions) return
		const key = freshKey(options)
		const fresh = like ?? { key, name: '', palette: [], pots: [], supplementCents: '0.00' }
		change({ ...draft, options: [...options, { ...fresh, key, name: '' }] })
		goTo(nameAt(options.length))
	}
	const note = (option: string, container: string, check: string, words: string) => {
		const others = draft.overruled.filter(
			(each) => each.option !== option || each.container !== container || each.check !== check,
		)
		change({ ...draft, overruled: [...others, { option, container, check, note: words }] })
	}
	return { designing, putIn, proposeAll, findOthers, add, note }
}
