'use client'
import type { DraftText } from '@/lib/forms/draft-form'
import { useDesign } from './use-design'

type Change = (next: DraftText | ((now: DraftText) => DraftText)) => void

export const mostOptions = 4

/** What is done to the palettes as wholes: proposed, filled by the server, taken out, noted. */
export function useOptions(base: string, draft: DraftText, change: Change) {
	const { designing, propose, grow, standIns, tell } = useDesign(base)
	const putIn = async (option: string, recipe: string | null) => {
		const answer = await grow(draft, option, recipe)
		if (answer === undefined) return
		const { pots } = answer.option
		change((now) => ({
			...now,
			options: now.options.map((each) => (each.key === option ? { ...each, pots } : each)),
		}))
	}
	const findOthers = async (material: string, container: string | null) =>
		(await standIns(draft, material, container))?.substitutes
	const proposeAll = async () => {
		const answer = await propose(draft)
		if (answer === undefined) return
		change((now) => ({ ...now, options: [...now.options, ...answer.options].slice(0, mostOptions) }))
		if (answer.short !== null) tell(answer.short)
	}
	/** Its notes go with it: another palette may come to bear its key. */
	const remove = (option: string) =>
		change({
			...draft,
			options: draft.options.filter(({ key }) => key !== option),
			overruled: draft.overruled.filter((each) => each.option !== option),
		})
	const note = (option: string, container: string, check: string, words: string | null) => {
		const others = draft.overruled.filter(
			(each) => each.option !== option || each.container !== container || each.check !== check,
		)
		change({
			...draft,
			overruled: words === null ? others : [...others, { option, container, check, note: words }],
		})
	}
	return { designing, putIn, proposeAll, findOthers, remove, note }
}
