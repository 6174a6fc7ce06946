import type { Dice, DrawPiece } from '../../piece'
import { roll, times } from '../growth/roll'
import { size } from '../growth/size'
import { drawn } from '../ink/drawn'
import { fill } from '../ink/layer'
import type { Point } from '../ink/point'
import { closed, type Line, oval } from '../ink/shape'
import { tones } from '../ink/tones'

type Scale = { readonly at: Point; readonly wide: number; readonly high: number; readonly lean: number }

/** One scale seen from outside: a rounded fan, its lip above, its point below; `lean` shifts its lip to a side. */
const scale = ({ at: [x, y], wide, high, lean }: Scale): Line => {
	const to = (u: number, v: number): Point => [x + wide * (u / 2 + lean * v), y - high * v]
	return closed(
		to(0, -0.5),
		[to(-0.7, -0.35), to(-1, 0.2)],
		[to(-0.8, 0.62), to(0, 0.66)],
		[to(0.8, 0.62), to(1, 0.2)],
		[to(0.7, -0.35), to(0, -0.5)],
	)
}

const lip = ({ at: [x, y], wide, high, lean }: Scale): Line => {
	const to = (u: number, v: number): Point => [x + wide * (u / 2 + lean * v), y - high * v]
	return closed(
		to(-0.86, 0.28),
		[to(-0.7, 0.58), to(0, 0.6)],
		[to(0.7, 0.58), to(0.86, 0.28)],
		[to(0.3, 0.12), to(0, 0.14)],
		[to(-0.3, 0.12), to(-0.86, 0.28)],
	)
}

/** How full the cone is from its foot (0) to its tip (1). */
const girth = (t: number): number =>
	t < 0.35 ? 0.72 + 0.28 * Math.sin((t / 0.35) * (Math.PI / 2)) : Math.cos(((t - 0.35) / 0.65) * 1.18) ** 0.9

/** How far apart, in radians round the cone, the outermost of so many scales of a row stand. */
const apart = [0, 0, 0.9, 1.7, 2.5] as const

const scalesIn = (t: number, row: number): 1 | 2 | 3 | 4 => {
	if (t === 1) return 1
	if (t > 0.75) return row % 2 === 0 ? 2 : 3
	return row % 2 === 0 ? 3 : 4
}

/** Rows of scales, each row between those of the row below, one scale at the tip. */
const rowsOf = (heightCm: number, acrossCm: number, count: number, dice: Dice): Scale[] =>
	times(count, (t, row) => {
		const half = (acrossCm / 2) * girth(t)
		const many = scalesIn(t, row)
		const wide = t === 1 ? acrossCm * 0.17 : half * 0.66
		const high = (heightCm / count) * (t === 0 ? 0.95 : 1.5 - 0.4 * t)
		return times(many, (u): Scale => {
			const turn = (u - 0.5) * apart[many]
			const sink = heightCm * (0.035 * (1 - Math.cos(turn)) + roll(dice, -0.004, 0.004)) * (t === 0 ? -1 : 1)
			return {
				at: [half * 0.9 * Math.sin(turn), -heightCm * (0.09 + 0.83 * t) + sink],
				wide: wide * (0.45 + 0.55 * Math.cos(turn)),
				high,
				lean: Math.sin(turn) * 0.3,
			}
		})
	}).flat()

/** A cone that stands on its stalk; a long one has more rows of scales. */
export const cone: DrawPiece = (line, dice) => {
	const acrossCm = size(line.acrossCm, size(line.lengthCm, 9.5, 2, 60) * 0.6, 1, 40)
	const heightCm = size(line.lengthCm, acrossCm * 1.66, acrossCm * 0.9, acrossCm * 3)
	const { light, base, deep } = tones(line.hex)
	const rows = Math.round(Math.min(8, 4.4 + (heightCm / acrossCm) * 1.8))
	return times(3, () => {
		const scales = rowsOf(heightCm, acrossCm, rows, dice)
		return drawn(
			[
				fill(deep, [oval([0, -heightCm * 0.42], acrossCm * 0.84, heightCm * 0.84, 0)]),
				fill(base, scales.map(scale)),
				fill(light, scales.map(lip)),
			],
			{ fitCm: heightCm },
		)
	})
}
