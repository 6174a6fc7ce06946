import { hex } from '../../../units/hex'
import type { Dice, DrawPiece } from '../../piece'
import { band } from '../growth/band'
import { roll, times } from '../growth/roll'
import { size } from '../growth/size'
import { walk } from '../growth/walk'
import { drawn } from '../ink/drawn'
import { fill, type Layer, pen } from '../ink/layer'
import { line, oval, type Round } from '../ink/shape'
import { type Tones, tones } from '../ink/tones'

const stalkGreen = hex('#7a7446')

/** A rib at `u` half widths from the middle, its size in shares of the whole. */
type Rib = (u: number, wide: number, high: number) => Round

/** Ovals one before the other, each with its groove; `turned` shifts those that face the viewer. */
const ribs = ({ light, base, dark, deep }: Tones, rib: Rib, turned: number): Layer[] => [
	fill(deep, [rib(turned, 0.8, 0.9)]),
	fill(dark, [rib(-0.58, 0.42, 0.84), rib(0.58, 0.42, 0.84)]),
	fill(base, [rib(-0.64, 0.34, 0.78)]),
	...[-0.34, 0.34].flatMap((u) => [
		fill(deep, [rib(u * 0.96 + turned, 0.44, 0.96)]),
		fill(base, [rib(u + turned, 0.43, 0.95)]),
	]),
	fill(light, [rib(-0.41 + turned, 0.2, 0.76)]),
	fill(dark, [rib(0.46 + turned, 0.3, 0.86)]),
	fill(base, [rib(0.38 + turned, 0.32, 0.9)]),
	fill(deep, [rib(turned + 0.01, 0.43, 1)]),
	fill(base, [rib(turned, 0.41, 0.99)]),
	fill(light, [rib(turned - 0.06, 0.2, 0.8)]),
]

/** The dent at the top and the stalk in it. */
function stalk(of: Tones, ink: Tones['deep'], middle: number, acrossCm: number, highCm: number, dice: Dice): Layer[] {
	const bend = roll(dice, 0.4, 1) * (dice() < 0.5 ? -1 : 1)
	const spots = walk({
		from: [middle, -highCm * 0.88],
		heading: -bend * 0.25,
		lengthCm: highCm * 0.32,
		legs: 3,
		turn: () => bend * 0.4,
	})
	const half = (t: number) => acrossCm * (0.06 - 0.024 * t + (t > 0.9 ? 0.012 : 0))
	const [left, right] = [middle - acrossCm * 0.17, middle + acrossCm * 0.17]
	return [
		pen(ink, acrossCm * 0.014, [
			line(
				[left, -highCm * 0.92],
				[
					[middle, -highCm * 0.83],
					[right, -highCm * 0.92],
				],
			),
		]),
		fill(of.base, [band(spots, (t) => -half(t), half)]),
		fill(of.dark, [band(spots, () => 0, half)]),
	]
}

/** A pumpkin or gourd; the second colour is that of its stalk. */
export const pumpkin: DrawPiece = (line_, dice) => {
	const acrossCm = size(line_.acrossCm, 18, 2, 80)
	const heightCm = size(line_.lengthCm, acrossCm * 0.92, acrossCm * 0.6, acrossCm * 1.5)
	const highCm = heightCm * 0.82
	const skin = tones(line_.hex)
	const green = tones(line_.secondHex ?? stalkGreen)
	const rib: Rib = (u, wide, high) => oval([(acrossCm / 2) * u, -highCm * 0.5], acrossCm * wide, highCm * high, 0)
	return times(3, () => {
		const turned = roll(dice, -0.09, 0.09)
		const top = stalk(green, skin.deep, acrossCm * turned * 0.3, acrossCm, highCm, dice)
		return drawn([...ribs(skin, rib, turned), ...top], { fitCm: heightCm })
	})
}
