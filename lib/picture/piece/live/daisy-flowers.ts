import type { Hex } from '../../../units/hex'
import type { DrawPiece } from '../../piece'
import { blade, leaf } from '../growth/leaf'
import { times } from '../growth/roll'
import { size } from '../growth/size'
import { drawn } from '../ink/drawn'
import { fill, type Layer, pen } from '../ink/layer'
import { ahead, type Point } from '../ink/point'
import { dot, type Line, line } from '../ink/shape'
import { eyeOf, leafGreen, type Tones, tones } from '../ink/tones'
import { overMound } from './mound'

const petals = 9

/** Petals as strokes of a round pen about the eye. */
const rays = (centre: Point, radiusCm: number, turn: number): Line[] =>
	times(petals, (_, index) => {
		const heading = turn + (index * 2 * Math.PI) / petals
		return line(ahead(centre, heading, radiusCm * 0.36), [ahead(centre, heading, radiusCm * 0.84)])
	})

type Wash = { readonly petal: Hex; readonly under: Hex; readonly heart: Tones }

const daisies = ({ petal, under, heart }: Wash, centres: readonly Point[], radiusCm: number): Layer[] => [
	pen(under, radiusCm * 1.36, centres.map(dot)),
	pen(
		petal,
		radiusCm * 0.36,
		centres.flatMap((centre, index) => rays(centre, radiusCm, index * 0.2)),
	),
	pen(heart.dark, radiusCm * 0.66, centres.map(dot)),
	pen(
		heart.base,
		radiusCm * 0.52,
		centres.map(([x, y]) => dot([x - radiusCm * 0.04, y - radiusCm * 0.05])),
	),
]

/** A mound of daisies: aster, marguerite, coneflower. */
export const daisyFlowers: DrawPiece = (line_, dice) => {
	const heightCm = size(line_.lengthCm, 28)
	const acrossCm = size(line_.acrossCm, heightCm * 1.1, heightCm * 0.5, heightCm * 3)
	const bloom = tones(line_.hex)
	const green = tones(line_.secondHex ?? leafGreen)
	const heart = tones(eyeOf(line_.hex))
	const radiusCm = Math.min(4.5, Math.min(acrossCm, heightCm * 1.2) * 0.13)
	const inside = { acrossCm: acrossCm - radiusCm * 1.8, heightCm: heightCm - radiusCm * 0.85 }
	return times(3, (_, variant) => {
		const row = (share: number, count: number) => overMound(inside, share, count, dice)
		const leaves = (share: number, count: number) =>
			row(share, count).map(({ at, heading }) =>
				blade(leaf([at[0], at[1]], heading * 1.15, radiusCm * 2.5, radiusCm * 0.85, heading * 0.3)),
			)
		const back = row(0.98, 6).map(({ at }) => at)
		const front = [...row(0.6, 4 - (variant % 2)), ...row(0.22, 1 + (variant % 2))].map(({ at }) => at)
		const stalks = back.map((at) => line([at[0] * 0.35, -heightCm * 0.16], [[at[0] * 0.6, at[1] * 0.6], at]))
		return drawn(
			[
				fill(green.dark, [...leaves(0.66, 8), ...leaves(0.28, 5)]),
				pen(green.dark, radiusCm * 0.14, stalks),
				fill(green.base, [...leaves(0.46, 4), ...leaves(0.1, 3)]),
				...daisies({ petal: bloom.dark, under: bloom.deep, heart }, back, radiusCm * 0.92),
				...daisies({ petal: bloom.base, under: bloom.dark, heart }, front, radiusCm),
			],
			{ fitCm: heightCm },
		)
	})
}
