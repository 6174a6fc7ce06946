import { ahead, type Point } from '../ink/point'
import { closed, type Leg, type Line, line } from '../ink/shape'

/** A leaf on its stalk. */
export type Hung = { readonly stalk: Point; readonly heading: number; readonly lengthCm: number }

/** Lobes of an ivy leaf and the notches between them: how far from the stalk, and how far off its middle. */
const lobes = [
	[0.42, -1.9],
	[0.32, -1.3],
	[0.74, -0.95],
	[0.46, -0.5],
	[1, 0],
	[0.46, 0.5],
	[0.74, 0.95],
	[0.32, 1.3],
	[0.42, 1.9],
] as const

export function lobed({ stalk, heading, lengthCm }: Hung): Line {
	const points = lobes.map(([share, off]) => ahead(stalk, heading + off, share * lengthCm))
	const leg = (at: number): Leg => [points[at] ?? stalk, points[at + 1] ?? stalk]
	return closed(points[0] ?? stalk, leg(1), leg(3), leg(5), leg(7), [stalk])
}

export const veins = ({ stalk, heading, lengthCm }: Hung): Line[] =>
	[-0.9, 0, 0.9].map((off) => line(stalk, [ahead(stalk, heading + off, lengthCm * (off === 0 ? 0.75 : 0.5))]))

export const less = (leaf: Hung, share: number): Hung => ({ ...leaf, lengthCm: leaf.lengthCm * share })
