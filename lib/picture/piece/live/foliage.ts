import type { DrawPiece } from '../../piece'
import { alternate, roll, times } from '../growth/roll'
import { size } from '../growth/size'
import { drawn } from '../ink/drawn'
import { fill, type Layer, pen } from '../ink/layer'
import { ahead, type Point } from '../ink/point'
import { closed, type Leg, type Line, line, oval } from '../ink/shape'
import { type Tones, tones } from '../ink/tones'
import { overMound, type Place } from './mound'

const lobes = 5

/** A round leaf with shallow lobes, its stalk in a notch. */
function roundLeaf({ at, heading }: Place, radiusCm: number): Line {
	const heart = ahead(at, heading, radiusCm * 0.4)
	const rim = (step: number, share: number): Point =>
		ahead(heart, heading - 2.7 + (step * 5.4) / lobes, radiusCm * share)
	const legs = times(lobes, (_, index): Leg => [rim(index + 0.5, 1.5), rim(index + 1, 0.84)])
	return closed(at, [rim(0, 0.84)], ...legs)
}

const veins = ({ at, heading }: Place, radiusCm: number): Line[] =>
	[-0.9, 0, 0.9].map((off) => line(at, [ahead(at, heading + off, radiusCm * (1.35 - 0.4 * Math.abs(off)))]))

/** A row of leaves: every other one lies behind its neighbours, in shade. */
const rank = (of: Tones, vein: Layer['colour'], places: readonly Place[], radiusCm: number): Layer[] => {
	const [front, back] = alternate(places)
	const leaves = (colour: Layer['colour'], some: readonly Place[]) => [
		fill(
			colour,
			some.map((place) => roundLeaf(place, radiusCm)),
		),
		pen(
			vein,
			radiusCm * 0.05,
			some.flatMap((place) => veins(place, radiusCm)),
		),
	]
	return [...leaves(of.dark, back), ...leaves(of.base, front)]
}

/** A mound of round leaves: heuchera; the second colour is that of its veins. */
export const foliage: DrawPiece = (line_, dice) => {
	const heightCm = size(line_.lengthCm, 22)
	const acrossCm = size(line_.acrossCm, heightCm * 1.35, heightCm * 0.5, heightCm * 3)
	const of = tones(line_.hex)
	const shaded = { ...of, base: of.dark, dark: of.deep }
	const lit = { ...of, base: of.light, dark: of.base }
	const radiusCm = Math.min(7, Math.min(acrossCm, heightCm * 1.4) * 0.135)
	const inside = { acrossCm: acrossCm - radiusCm * 2.4, heightCm: heightCm - radiusCm * 1.3 }
	return times(3, (_, variant) => {
		const row = (share: number, count: number) =>
			overMound(inside, share, count, dice).map((place) => ({
				...place,
				heading: place.heading * 1.1 + roll(dice, -0.15, 0.15),
			}))
		return drawn(
			[
				fill(of.deep, [oval([0, -heightCm * 0.42], acrossCm * 0.62, heightCm * 0.72, 0)]),
				...rank(shaded, line_.secondHex ?? of.deep, row(1, 8 - (variant % 2)), radiusCm),
				...rank(of, line_.secondHex ?? of.deep, row(0.7, 6), radiusCm),
				...rank(lit, line_.secondHex ?? of.dark, row(0.34, 4), radiusCm),
				...rank(of, line_.secondHex ?? of.deep, row(0.02, 2), radiusCm),
			],
			{ fitCm: heightCm },
		)
	})
}
