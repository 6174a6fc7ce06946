import { isWithin, type Lab, labDifference, labOf } from '../difference'
import { lostUnder } from '../losses'
import { oklchOf } from '../name-of'
import { type Desk, deskOf, type Known, nearestFirst, type Target } from './desk'
import type { Chip, Judged, PaletteAsk, PaletteColour, Parts } from './palette'
import { echoWords, wordsOf } from './words'

// Common practice, no published source: each of these ΔE00, and the weights.
/** Within it a material makes a colour. */
const makesWithin = 8
/** Within it a colour is seen to be that of the building. */
export const echoesWithin = 12
const mostMaterials = 6
const weights: Parts = { echo: 0.4, standing: 0.3, spread: 0.15, stock: 0.15 }

const fraction = (of: number): number => Math.min(1, Math.max(0, of))

export type Echo = { readonly target: Target; readonly difference: number }

/** A chip with what was found out about it. */
export type Seen = {
	readonly chip: Chip
	readonly echo: Echo | null
	readonly makers: readonly Known[]
	readonly fromWall: number
	readonly lightness: number
}

/** The colour of the building that is nearest, given ΔE00 from each, if it is near enough to be seen as that. */
export function echoOf({ targets }: Desk, fromTargets: readonly number[]): Echo | null {
	const difference = Math.min(...fromTargets)
	const target = targets[fromTargets.indexOf(difference)]
	return target !== undefined && difference <= echoesWithin ? { target, difference } : null
}

function seen(chip: Chip, desk: Desk): Seen {
	const lab = labOf(chip.hex)
	const makers = desk.usable
		.filter((known) => isWithin(known.lab, lab, makesWithin))
		.map((known) => ({ known, difference: labDifference(known.lab, lab) }))
	const fromTargets = desk.targets.map((target) => labDifference(target.lab, lab))
	return {
		chip,
		echo: echoOf(desk, fromTargets),
		makers: nearestFirst(makers).map(({ known }) => known),
		fromWall: labDifference(desk.wall, lab),
		lightness: oklchOf(chip.hex).l,
	}
}

/** Closeness of the best echo of each colour of the building, the two best of them; 1 is the very colour twice. */
function echoPart(all: readonly Seen[], { targets }: Desk): number {
	const best = targets.map((target) =>
		Math.max(0, ...all.map(({ echo }) => (echo?.target === target ? 1 - echo.difference / (2 * echoesWithin) : 0))),
	)
	const asked = Math.min(2, targets.length)
	const two = best.toSorted((a, b) => b - a).slice(0, asked)
	return asked === 0 ? 0 : two.reduce((sum, each) => sum + each, 0) / asked
}

/** Greens from which a colour is clear, as a share; 1 where there are none. */
export function clearOfGreens({ greens }: Desk, lab: Lab): number {
	if (greens.length === 0) return 1
	return greens.filter((green) => !isWithin(green.lab, lab, lostUnder)).length / greens.length
}

const isThriller = ({ makers }: Seen): boolean => makers.some(({ material }) => material.role === 'thriller')

/** The colour of the stems that stands out most from the wall; null where no stem has any of the colours. */
function topOf(all: readonly Seen[]): Seen | null {
	return all.filter(isThriller).reduce<Seen | null>((a, b) => (a === null || b.fromWall > a.fromWall ? b : a), null)
}

export type Findings = {
	readonly all: readonly Seen[]
	readonly top: Seen | null
	/** Share of the month's greens that the leading accent is clear of. */
	readonly clear: number
	readonly parts: Parts
}

/** Each colour of the building is echoed by one chip, the nearest. */
function nearestAlone(all: readonly Seen[]): Seen[] {
	return all.map((one, index) => {
		const { echo } = one
		if (echo === null) return one
		const isBeaten = all.some(
			(other, at) =>
				other.echo?.target === echo.target &&
				(other.echo.difference < echo.difference || (other.echo.difference === echo.difference && at < index)),
		)
		return isBeaten ? { ...one, echo: null } : one
	})
}

function find(chips: readonly Chip[], desk: Desk): Findings {
	const all = nearestAlone(chips.map((chip) => seen(chip, desk)))
	const [lead] = all
	const top = topOf(all)
	const clear = lead === undefined ? 0 : clearOfGreens(desk, labOf(lead.chip.hex))
	const lights = all.map(({ lightness }) => lightness)
	const stocked = all.filter(({ makers }) => makers.some(({ material }) => material.inStock > 0))
	const parts = {
		echo: echoPart(all, desk),
		standing: (fraction((top?.fromWall ?? 0) / (2 * lostUnder)) + clear) / 2,
		spread: all.length === 0 ? 0 : fraction((Math.max(...lights) - Math.min(...lights)) / 0.45),
		stock: all.length === 0 ? 0 : stocked.length / all.length,
	}
	return { all, top, clear, parts }
}

const colourOf = ({ chip, echo, makers }: Seen): PaletteColour => ({
	...chip,
	echoes: echo === null ? '' : echoWords(chip, echo.target),
	materials: makers.slice(0, mostMaterials).map(({ material }) => material.id),
})

export function judgeOn(chips: readonly Chip[], desk: Desk): Judged {
	const found = find(chips, desk)
	const { echo, standing, spread, stock } = found.parts
	const score = weights.echo * echo + weights.standing * standing + weights.spread * spread + weights.stock * stock
	return { colours: found.all.map(colourOf), parts: found.parts, score, words: wordsOf(found, desk) }
}

/**
 * What a palette is worth before a building, the leading accent first: what each colour echoes and of what it can be
 * made, parts and score from 0 to 1, and the score in words. For palettes made by hand or changed by hand as well.
 */
export const judge = (chips: readonly Chip[], ask: PaletteAsk): Judged => judgeOn(chips, deskOf(ask))
