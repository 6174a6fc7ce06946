import type { Hex } from '../../../units/hex'
import type { DrawPiece } from '../../piece'
import { drop } from '../growth/leaf'
import { times } from '../growth/roll'
import { size } from '../growth/size'
import { drawn } from '../ink/drawn'
import { dashes, fill, type Layer, pen } from '../ink/layer'
import type { Point } from '../ink/point'
import { disc, dot, oval } from '../ink/shape'
import { leafGreen, tones } from '../ink/tones'
import { overMound } from './mound'

/** So many petals as a ring of that radius holds: a pen with round ends that lifts after each of them. */
const ring = (colour: Hex, centres: readonly Point[], radiusCm: number, petals: number): Layer => {
	const apart = (2 * Math.PI * radiusCm) / petals
	return dashes(
		colour,
		apart * 1.2,
		[0, apart],
		centres.map((centre) => disc(centre, radiusCm)),
	)
}

type Wash = { readonly rim: Hex; readonly inner: Hex; readonly heart: Hex }

/** Full flowers seen from the front: petals round about, a smaller ring upon them, a heart. */
const blossoms = ({ rim, inner, heart }: Wash, centres: readonly Point[], radiusCm: number): Layer[] => [
	ring(rim, centres, radiusCm * 0.76, 10),
	pen(rim, radiusCm * 1.4, centres.map(dot)),
	ring(inner, centres, radiusCm * 0.42, 8),
	pen(heart, radiusCm * 0.42, centres.map(dot)),
]

/** A mound of full flowers: chrysanthemum, pansy, begonia. */
export const roundFlowers: DrawPiece = (line, dice) => {
	const heightCm = size(line.lengthCm, 24)
	const acrossCm = size(line.acrossCm, heightCm * 1.2, heightCm * 0.5, heightCm * 3)
	const { light, base, dark, deep } = tones(line.hex)
	const green = tones(line.secondHex ?? leafGreen)
	const radiusCm = Math.min(6, Math.min(acrossCm, heightCm * 1.3) * 0.118)
	const inside = { acrossCm: acrossCm - radiusCm * 1.8, heightCm: heightCm - radiusCm * 0.8 }
	return times(3, (_, variant) => {
		const row = (share: number, count: number) => overMound(inside, share, count, dice)
		const leaves = (share: number, count: number) =>
			row(share, count).map(({ at, heading }) => drop(at, heading * 1.1, radiusCm * 1.9, radiusCm * 1.1))
		const flowers = (share: number, count: number) => row(share, count).map(({ at }) => at)
		return drawn(
			[
				fill(green.deep, [oval([0, -heightCm * 0.38], acrossCm * 0.7, heightCm * 0.76, 0)]),
				fill(green.dark, [...leaves(0.84, 10), ...leaves(0.12, 5)]),
				fill(green.base, leaves(0.6, 7)),
				...blossoms({ rim: dark, inner: base, heart: deep }, flowers(0.97, 7 + (variant % 2)), radiusCm),
				...blossoms({ rim: base, inner: light, heart: dark }, flowers(0.64, 5), radiusCm),
				...blossoms({ rim: base, inner: light, heart: dark }, flowers(0.28, 3), radiusCm),
			],
			{ fitCm: heightCm },
		)
	})
}
