import { list } from '../../format/words'
import type { Planned } from '../../recipe/planned'
import type { Hex } from '../../units/hex'
import { difference } from '../difference'
import { type Behind, type Loss, losses } from '../losses'
import { nameOf } from '../name-of'
import { type Deficiency, deficiencies, deficiencyWords, missing } from './deficiency'
import { seenAs } from './seen-as'

/** ΔE00 under which two colours of a planting run together at a few steps (common practice, no published source). */
const togetherUnder = 10

type Chip = { readonly name: string; readonly hex: Hex }
/** A palette as it is seen without one kind of cones, colour by colour. */
export type SeenStrip = { readonly of: Deficiency; readonly words: string; readonly hexes: readonly Hex[] }

export function stripsOf(palette: readonly Chip[]): SeenStrip[] {
	return deficiencies.map((of) => ({
		of,
		words: deficiencyWords(of),
		hexes: palette.map(({ hex }) => seenAs(hex, of)),
	}))
}

/** "Brass and sage" that most people tell apart, and eyes without these cones do not. */
function together(palette: readonly Chip[], of: Deficiency): string[] {
	const called = ({ name, hex }: Chip) => name || nameOf(hex)
	return palette.flatMap((one, index) =>
		palette
			.slice(index + 1)
			.filter(
				({ hex }) =>
					difference(one.hex, hex) >= togetherUnder && difference(seenAs(one.hex, of), seenAs(hex, of)) < togetherUnder,
			)
			.map((other) => `hardly tell ${called(one)} and ${called(other)} apart`),
	)
}

const keyOf = ({ material: { id }, in: ground }: Loss) => `${id} ${ground}`

/** What most people see against wall, door and greens, and eyes without these cones do not. */
function lostTo(of: Deficiency, lines: readonly Planned[], behind: Behind): string[] {
	const toAll = new Set(losses(lines, behind).map(keyOf))
	return losses(lines, behind, (hex) => seenAs(hex, of))
		.filter((each) => !toAll.has(keyOf(each)))
		.map(
			({ material: { name }, in: ground, called }) =>
				`lose ${name} ${ground === 'greens' ? 'in' : 'against'} ${called}`,
		)
}

export type PotBehind = { readonly lines: readonly Planned[]; readonly behind: Behind }

/**
 * What runs together for people with a colour-vision deficiency, in sentences, each with the cones that are missing:
 * two colours of the palette, or a thing of a pot and what lies behind it. What nobody tells apart is not among it.
 */
export function eyeWords(palette: readonly Chip[], pots: readonly PotBehind[]): string[] {
	const found = new Map<string, string[]>()
	for (const of of deficiencies) {
		const here = [...together(palette, of), ...pots.flatMap(({ lines, behind }) => lostTo(of, lines, behind))]
		for (const what of new Set(here)) found.set(what, [...(found.get(what) ?? []), missing[of]])
	}
	return [...found].map(([what, cones]) => `Eyes without ${list(cones, 'or')} cones ${what}.`)
}
