import type { Dice, DrawPiece } from '../../piece'
import { limb, thread } from '../growth/band'
import { blade, leaf } from '../growth/leaf'
import { roll, side, times } from '../growth/roll'
import { size } from '../growth/size'
import { type Spot, spotAt, walk } from '../growth/walk'
import { drawn } from '../ink/drawn'
import { fill, type Layer, pen } from '../ink/layer'
import { ahead } from '../ink/point'
import { line, type Shape } from '../ink/shape'
import { type Tones, tones } from '../ink/tones'

/** Slender at both ends, fullest below its middle. */
const flame = (t: number): number => Math.sin(Math.PI * (0.06 + 0.9 * t) ** 0.75) ** 0.9

/** Hairs that leave the plume upwards; long ones give way to their weight. */
const hairs = (plume: readonly Spot[], wideCm: number, count: number, isLong: boolean, dice: Dice): Shape[] =>
	times(count, (t, index) => {
		const { at, heading } = spotAt(plume, 0.97 * t)
		const out = side(index)
		const long = wideCm * (0.25 + 0.75 * flame(t)) * roll(dice, 0.75, 1.15)
		const half = ahead(at, heading + out * roll(dice, 0.2, 0.5), long * (isLong ? 0.6 : 1))
		return isLong ? line(at, [half, ahead(half, heading + out * roll(dice, 0.5, 1), long * 0.5)]) : line(at, [half])
	})

type Heads = { readonly headCm: number; readonly wideCm: number; readonly count: number }

/** The heads of stems, each nodding the way it leans. */
function feathered(
	of: Tones,
	stems: readonly (readonly Spot[])[],
	{ headCm, wideCm, count }: Heads,
	dice: Dice,
): Layer[] {
	const ends = stems.map((stem) => {
		const { at, heading } = spotAt(stem, 1)
		return { at, heading, nod: (Math.abs(heading) > 0.05 ? Math.sign(heading) : roll(dice, -1, 1)) * 0.4 }
	})
	const heads = ends.map(({ at, heading, nod }) =>
		walk({ from: at, heading, lengthCm: headCm, legs: 5, turn: (t) => nod * 0.3 * t }),
	)
	const hairy = (share: number, many: number) =>
		heads.flatMap((head) => hairs(head, wideCm * share, many, stems.length === 1, dice))
	return [
		pen(of.dark, wideCm * 0.06, hairy(1, count)),
		fill(
			of.base,
			ends.map(({ at, heading, nod }) => blade(leaf(at, heading, headCm, wideCm * 0.42, nod * 0.7, 0.42))),
		),
		pen(of.base, wideCm * 0.06, hairy(0.95, count)),
		pen(of.light, wideCm * 0.05, hairy(0.7, Math.round(count * 0.7))),
	]
}

/** A cut stem with one plume: pampas, celosia. */
function single(of: Tones, straw: Tones, lengthCm: number, wideCm: number, dice: Dice): Layer[] {
	const lean = roll(dice, -0.1, 0.1)
	const stem = walk({ from: [0, 0], heading: -lean, lengthCm: lengthCm * 0.56, legs: 3, turn: () => lean * 0.7 })
	const heads = { headCm: lengthCm * 0.45, wideCm, count: 30 }
	return [fill(straw.base, [limb(stem, lengthCm * 0.013, lengthCm * 0.009)]), ...feathered(of, [stem], heads, dice)]
}

/** A plant with plumes over a fountain of blades: fountain grass. */
function plant(of: Tones, straw: Tones, heightCm: number, spread: number, dice: Dice): Layer[] {
	const fan = (count: number, long: number) =>
		times(count, (t) => {
			const out = (2 * t - 1) * spread + roll(dice, -0.12, 0.12)
			const length = heightCm * long * roll(dice, 0.85, 1.1)
			return blade(
				leaf([out * heightCm * 0.05, 0], out * 0.7, length, heightCm * 0.024, out * roll(dice, 0.9, 1.7), 0.52),
			)
		})
	const stems = times(5, (t, index) => {
		const out = (2 * t - 1) * spread * 0.7 + roll(dice, -0.05, 0.05)
		const long = heightCm * (index % 2 === 0 ? 0.6 : 0.74) * roll(dice, 0.94, 1.04)
		return walk({
			from: [out * heightCm * 0.05, 0],
			heading: out * 0.7,
			lengthCm: long,
			legs: 3,
			turn: () => out * 0.16,
		})
	})
	const heads = { headCm: heightCm * 0.27, wideCm: heightCm * 0.15, count: 9 }
	return [
		fill(straw.dark, fan(9, 0.8)),
		pen(straw.dark, heightCm * 0.008, stems.map(thread)),
		...feathered(of, stems, heads, dice),
		fill(straw.base, fan(8, 0.66)),
		fill(straw.light, fan(5, 0.5)),
	]
}

/** Feathery heads: one on a stem, or where it spreads wider than two fifths of its height, a plant of them. */
export const plume: DrawPiece = (line_, dice) => {
	const lengthCm = size(line_.lengthCm, 70)
	const acrossCm = size(line_.acrossCm, lengthCm * 0.15, lengthCm * 0.04, lengthCm * 1.4)
	const of = tones(line_.hex)
	const straw = tones(line_.secondHex ?? of.dark)
	const layers = () =>
		acrossCm > lengthCm * 0.4
			? plant(of, straw, lengthCm, acrossCm / lengthCm, dice)
			: single(of, straw, lengthCm, acrossCm, dice)
	return times(3, () => drawn(layers(), { fitCm: lengthCm }))
}
