import { capital, numberWord } from '../../format/words'
import { monthName } from '../../recipe/almanac/months'
import type { MaterialId } from '../../units/id'
import { nounOf } from '../name-of'
import { chipsOf } from './chips-of'
import { type Desk, deskOf, nearestFirst } from './desk'
import { echoesWithin, judgeOn } from './judge'
import { leadsOf } from './leads'
import type { Chip, Palette, PaletteAsk } from './palette'
import { allOf, type Echoes, type Picks, picksFor } from './picks'

export type Proposed = {
	/** At most three. */
	readonly palettes: readonly Palette[]
	/** For each colour of the building, the door among them, what echoes it: the nearest first, stock first among near equals. */
	readonly echoed: readonly (Chip & { readonly materials: readonly MaterialId[] })[]
	/** Why there are fewer than three; null where there are three. */
	readonly short: string | null
}

/** "Copper and plum": the first two colours, in as few words as tell it from those before. */
function called(chips: readonly Chip[], taken: readonly string[]): string {
	const [first, second] = chips
	if (first === undefined) return ''
	const pair = (word: (chip: Chip) => string) =>
		capital(second === undefined ? word(first) : `${word(first)} and ${word(second)}`)
	const tries = [pair(({ hex }) => nounOf(hex)), pair(({ name }) => name.toLowerCase())]
	const free = tries.find((name) => !taken.includes(name))
	return (free ?? `${tries[0]}, ${numberWord(taken.length + 1).toLowerCase()}`).slice(0, 60)
}

/** For each colour of the building, the materials that echo it. */
const echoesOf = ({ targets, usable }: Desk): Echoes =>
	new Map(
		targets.map((target, index) => {
			const all = usable.map((known) => ({ known, difference: known.fromTargets[index] ?? 100 }))
			return [target, nearestFirst(all.filter(({ difference }) => difference <= echoesWithin))]
		}),
	)

function why({ usable, ask }: Desk, count: number): string | null {
	if (count === 3) return null
	if (usable.length === 0)
		return `Nothing that shows can be had in ${monthName(ask.month)}: look at the months of the materials.`
	return `${numberWord(count)} only: what can be had in ${monthName(ask.month)} has no three colours that differ enough to lead a palette each.`
}

/**
 * Three palettes of the building's colours, to be had in the month: each an accent that leads, a second one, a stem
 * that stands out from the wall, and a neutral, as far as there are such materials. The leading accents are more than
 * ΔE00 10 apart. A palette's colour is that of its leading material. The best palette first; the same question gives
 * the same answer, in whatever order the materials come.
 */
export function palettes(ask: PaletteAsk): Proposed {
	const desk = deskOf(ask)
	const echoes = echoesOf(desk)
	const before: Picks[] = []
	const made: Palette[] = []
	for (const { known, echoes: target } of leadsOf(desk)) {
		const picks = picksFor(known, target, { desk, echoes, before })
		before.push(picks)
		const chips = chipsOf(allOf(picks).map(({ material }) => material))
		const taken = made.map(({ name }) => name)
		made.push({ name: called(chips, taken), ...judgeOn(chips, desk) })
	}
	const echoed = [...echoes].map(([{ name, hex }, near]) => ({
		name,
		hex,
		materials: near.map(({ known: { material } }) => material.id),
	}))
	return { palettes: made.toSorted((a, b) => b.score - a.score), echoed, short: why(desk, made.length) }
}
