import { hex } from '../../../units/hex'
import type { Dice, DrawPiece } from '../../piece'
import { band } from '../growth/band'
import { blade, leaf } from '../growth/leaf'
import { roll, times } from '../growth/roll'
import { size } from '../growth/size'
import { type Spot, spotAt, walk } from '../growth/walk'
import { drawn } from '../ink/drawn'
import { fill, type Layer, pen } from '../ink/layer'
import { ahead, type Point } from '../ink/point'
import { type Line, line, oval } from '../ink/shape'
import { type Tones, tones } from '../ink/tones'

const cutWood = hex('#dcbf92')

/** A point on the bark: `u` from its left edge (-1) to its right (1), `t` from the foot up. */
const onBark = (log: readonly Spot[], half: number, u: number, t: number): Point => {
	const { at, heading } = spotAt(log, t)
	return ahead(at, heading + Math.PI / 2, u * half)
}

/** Slits across the bark, from edge to edge at the most. */
const slits = (log: readonly Spot[], half: number, count: number, thick: number, dice: Dice): Line[] =>
	times(count, (t) => {
		const from = roll(dice, -0.94, 0.35)
		const long = Math.min(0.93 - from, roll(dice, 0.35, 1.05))
		const at = onBark(log, half, from, 0.04 + 0.86 * t + roll(dice, -0.035, 0.035))
		return blade(
			leaf(at, Math.PI / 2 + roll(dice, -0.05, 0.08), long * half, half * thick * roll(dice, 0.7, 1.3), 0.12, 0.45),
		)
	})

/** Where a branch was: a dark eye under a brow. */
const knot = (log: readonly Spot[], half: number, u: number, t: number): Line[] => {
	const eye = onBark(log, half, u, t)
	const brow = (to: number) => leaf(ahead(eye, 0, half * 0.42), to * 2, half * 0.62, half * 0.2, to * 0.3)
	return [
		blade(brow(1)),
		blade(brow(-1)),
		blade(leaf(ahead(eye, -Math.PI / 2, half * 0.3), Math.PI / 2, half * 0.6, half * 0.42)),
	]
}

/** Bark in the round: lit to the left, in shade to the right. */
function bark(of: Tones, log: readonly Spot[], half: number, dice: Dice): Layer[] {
	const wide = times(6, (t) => half * (t > 0.95 ? 1 : roll(dice, 0.96, 1.03)))
	const reach = (share: number) => (t: number) => (wide[Math.round(t * 5)] ?? half) * share
	return [
		fill(of.base, [band(log, reach(-1), reach(1))]),
		fill(of.light, [band(log, reach(-0.86), reach(-0.45))]),
		fill(of.dark, [band(log, reach(0.42), reach(1))]),
	]
}

/** The cut end with its rings and a crack. */
function cutEnd(wood: Tones, rim: Tones['deep'], top: Point, half: number, tilt: number): Layer[] {
	const cut = (share: number) => oval(ahead(top, 0, half * 0.03), half * 2 * share, half * 0.8 * share, tilt)
	const crack = ahead(top, 1.2, half * 0.1)
	return [
		fill(rim, [cut(1.01)]),
		fill(wood.base, [cut(0.88)]),
		pen(wood.dark, half * 0.044, [cut(0.66), cut(0.44), cut(0.2), line(crack, [ahead(crack, 1.35, half * 0.6)])]),
	]
}

/** Cut logs that stand upright; the second colour is that of their cut ends. */
export const logs: DrawPiece = (line_, dice) => {
	const lengthCm = size(line_.lengthCm, 50)
	const half = Math.min(size(line_.acrossCm, 7, 1, 40), lengthCm * 0.5) / 2
	const of = tones(line_.hex)
	return times(3, (_, variant) => {
		const log = walk({
			from: [0, 0],
			heading: roll(dice, -0.015, 0.015),
			lengthCm: lengthCm - half * 0.42,
			legs: 5,
			turn: () => roll(dice, -0.018, 0.018),
		})
		const marks = [
			...slits(log, half, 7, 0.3, dice),
			...slits(log, half, 11, 0.12, dice),
			...knot(log, half, roll(dice, -0.3, 0.2), 0.25 + 0.2 * variant + roll(dice, 0, 0.1)),
		]
		return drawn(
			[
				...bark(of, log, half, dice),
				fill(tones(of.deep).deep, marks),
				...cutEnd(tones(line_.secondHex ?? cutWood), of.deep, spotAt(log, 1).at, half, roll(dice, -0.16, 0.16)),
			],
			{ fitCm: lengthCm },
		)
	})
}
