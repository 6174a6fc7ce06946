import { ahead, type Point } from '../ink/point'
import { type Line, polygon } from '../ink/shape'
import { times } from './roll'
import { type Spot, spotAt } from './walk'

/** How long a tooth is and how far it leans forward (0: straight out), at `t`. */
type Tooth = { readonly cm: (t: number) => number; readonly forward: (t: number) => number }

/** Out to the tips of the teeth and back to the stem, along one side of it. */
const teeth = (spots: readonly Spot[], to: -1 | 1, count: number, { cm, forward }: Tooth): Point[] =>
	times(count, (t): Point[] => {
		const { at, heading } = spotAt(spots, t)
		const back = spotAt(spots, t + 0.62 / count)
		const tip = ahead(at, heading + to * (Math.PI / 2 - forward(t)), cm(t))
		return [tip, ahead(back.at, back.heading + (to * Math.PI) / 2, cm(t) * 0.12)]
	}).flat()

/** A stem with teeth to both sides, one silhouette: a frond of fern, a twig of needles. */
export const feather = (spots: readonly Spot[], count: number, tooth: Tooth): Line =>
	polygon([
		spotAt(spots, 0).at,
		...teeth(spots, -1, count, tooth),
		spotAt(spots, 1).at,
		...teeth(spots, 1, count, tooth).toReversed(),
	])
