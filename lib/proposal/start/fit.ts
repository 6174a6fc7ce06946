import { judgeOn } from '../../colour/palette/judge'
import type { Judged } from '../../colour/palette/palette'
import { list } from '../../format/words'
import type { Finding } from '../../recipe/check/finding'
import { aloneInWords } from '../design/around/alone'
import { potStates } from '../design/pot-state'
import type { DraftOption } from '../draft'
import type { Card } from '../facts'
import { deskFor, type Ground } from './fresh'

/** How one palette stands at a client's. */
export type Fit = {
	readonly option: string
	readonly name: string
	/** What speaks for it: "Copper is very near your door brass." */
	readonly well: readonly string[]
	/** What has to be looked at again, and where, and what is bought for this client alone: empty where it fits. */
	readonly badly: readonly string[]
	/** 0 to 1, less for every pot that has to be looked at again. */
	readonly worth: number
}

/** What a design loses that has to be looked at again in all of its pots (common practice, no published source). */
const lookedAtAgain = 0.25
const mostWords = 2

type Found = { readonly says: string; readonly at: string }

/** "Left urn and right urn: …" */
function grouped(found: readonly Found[]): string[] {
	const sentences = [...new Set(found.map(({ says }) => says))]
	return sentences.map((says) => {
		const where = found.filter((each) => each.says === says).map(({ at }) => at)
		return `${list([...new Set(where)])}: ${says}`
	})
}

/** What has to be looked at again: what weighs most, and a palette that was there before. */
const isAgain = ({ key, weight }: Finding): boolean => weight === 'look again' || key.startsWith('palette/')

type In = { readonly found: readonly Found[]; readonly share: number; readonly alone: readonly string[] }

function findingsIn(option: DraftOption, { draft, facts, around }: Ground): In {
	const name = new Map(facts.cards.map((card: Card) => [card.id, card.name]))
	const states = potStates(option, draft, facts, around).map(({ container, open }) => ({
		at: name.get(container) ?? '',
		again: open.filter(isAgain),
		open,
	}))
	const found = states.flatMap(({ at, again }) => again.map(({ says }) => ({ says, at })))
	const bad = states.filter(({ again }) => again.length > 0).length
	const alone = aloneInWords(
		states.flatMap(({ open }) => open),
		facts.materials,
	)
	return { found, share: states.length === 0 ? 0 : bad / states.length, alone }
}

function words({ parts, words: all, colours }: Judged, { site }: Ground): Pick<Fit, 'well' | 'badly'> {
	const isDeaf = parts.echo === 0 && site.length > 0
	const well = colours.filter(({ echoes }) => echoes !== '').map(({ name, echoes }) => `${name} ${echoes}.`)
	return { well: well.slice(0, mostWords), badly: isDeaf ? all.slice(0, 1) : [] }
}

/** How an option of a draft stands in each pot, and its palette, as it was judged, before the client's wall. */
export function fitOf(option: DraftOption, judged: Judged | undefined, ground: Ground): Fit {
	const { well, badly } = judged === undefined ? { well: [], badly: [] } : words(judged, ground)
	const { found, share, alone } = findingsIn(option, ground)
	return {
		option: option.key,
		name: option.name,
		well,
		badly: [...badly, ...grouped(found), ...alone],
		worth: (judged?.score ?? 0) - lookedAtAgain * share,
	}
}

/** How every option of a draft stands. */
export function fitsOf(ground: Ground): Fit[] {
	const desk = deskFor(ground)
	return ground.draft.options.map((option) => fitOf(option, desk && judgeOn(option.palette, desk), ground))
}
