import type { Dice, DrawPiece } from '../../piece'
import { limb, thread } from '../growth/band'
import { drop } from '../growth/leaf'
import { roll, side, times } from '../growth/roll'
import { size } from '../growth/size'
import { type Spot, spotAt, walk } from '../growth/walk'
import { drawn } from '../ink/drawn'
import { fill, type Layer, pen } from '../ink/layer'
import { ahead, type Point } from '../ink/point'
import { disc, dot, type Line, line } from '../ink/shape'
import { type Tones, tones } from '../ink/tones'

type Rays = { readonly ends: readonly Point[]; readonly lines: readonly Line[] }

/** Rays from the heart, and where they end. */
function rays(heart: Point, count: number, radiusCm: number, dice: Dice): Rays {
	const ends = times(count, (_, index) => {
		const turn = ((index + roll(dice, -0.25, 0.25)) * 2 * Math.PI) / count
		return ahead(heart, turn, radiusCm * roll(dice, 0.84, 1))
	})
	return { ends, lines: ends.map((end) => line(heart, [end])) }
}

/** A ball of seeds: allium. */
function ball(of: Tones, heart: Point, acrossCm: number, dice: Dice): Layer[] {
	const [far, near, close] = [
		rays(heart, 30, acrossCm / 2.08, dice),
		rays(heart, 21, acrossCm / 2.9, dice),
		rays(heart, 11, acrossCm / 5, dice),
	]
	return [
		pen(of.dark, acrossCm * 0.014, [...far.lines, ...near.lines]),
		fill(of.dark, [disc(heart, acrossCm * 0.06)]),
		pen(of.dark, acrossCm * 0.08, far.ends.map(dot)),
		pen(of.base, acrossCm * 0.08, near.ends.map(dot)),
		pen(of.light, acrossCm * 0.07, close.ends.map(dot)),
	]
}

/** An ear: grains in two rows and their long beards: wheat. */
function ear(of: Tones, stem: readonly Spot[], earCm: number, thickCm: number, dice: Dice): Layer[] {
	const { at, heading } = spotAt(stem, 1)
	const spine = walk({ from: at, heading, lengthCm: earCm, legs: 4, turn: () => heading * 0.12 })
	const grains = times(15, (t, index) => {
		const spot = spotAt(spine, 0.94 * t)
		const out = index === 14 ? 0 : side(index) * (0.62 - 0.2 * t)
		return { at: spot.at, heading: spot.heading + out, long: earCm * 0.2 * (1 - 0.25 * t) }
	})
	const beards = grains.map((grain) => {
		const tip = ahead(grain.at, grain.heading, grain.long)
		return line(tip, [
			ahead(tip, (grain.heading + heading) / 2 + roll(dice, -0.06, 0.06), earCm * roll(dice, 0.45, 0.7)),
		])
	})
	const rows = (to: number) =>
		grains
			.filter((_, index) => index % 2 === to)
			.map((grain) => drop(grain.at, grain.heading, grain.long, thickCm * 0.6))
	return [
		pen(of.light, thickCm * 0.06, beards),
		fill(of.dark, rows(1)),
		fill(of.base, rows(0)),
		pen(of.light, thickCm * 0.09, [thread(spine)]),
	]
}

/** Dried seeds on their stem: a ball such as allium; where it is slender, an ear such as wheat. */
export const seedHead: DrawPiece = (line_, dice) => {
	const lengthCm = size(line_.lengthCm, 45)
	const acrossCm = Math.min(lengthCm * 0.7, size(line_.acrossCm, 11, 1, 60))
	const of = tones(line_.hex)
	const isEar = acrossCm < lengthCm * 0.1
	const straw = line_.secondHex ?? of.dark
	const headCm = isEar ? Math.min(lengthCm * 0.2, acrossCm * 3) : acrossCm / 2
	return times(3, () => {
		const lean = roll(dice, -0.1, 0.1)
		const stemCm = lengthCm - headCm * (isEar ? 1.5 : 1)
		const stem = walk({
			from: [0, 0],
			heading: -lean,
			lengthCm: stemCm,
			legs: 4,
			turn: () => lean * (isEar ? 0.9 : 0.5),
		})
		const stalk = fill(straw, [limb(stem, Math.max(0.25, lengthCm * 0.009), Math.max(0.2, lengthCm * 0.007))])
		const head = isEar ? ear(of, stem, headCm, acrossCm, dice) : ball(of, spotAt(stem, 1).at, acrossCm, dice)
		return drawn([stalk, ...head], { fitCm: lengthCm })
	})
}
