import { ahead, type Point } from '../ink/point'
import { closed, type Line, line } from '../ink/shape'

/** A leaf on its foot; `bend` turns its tip, `belly` says how far up it is widest. */
export type Leaf = {
	readonly foot: Point
	readonly heading: number
	readonly lengthCm: number
	readonly widthCm: number
	readonly bend: number
	readonly belly: number
}

export const leaf = (foot: Point, heading: number, lengthCm: number, widthCm: number, bend = 0, belly = 0.5): Leaf => ({
	foot,
	heading,
	lengthCm,
	widthCm,
	bend,
	belly,
})

const middle = ({ foot, heading, lengthCm, belly }: Leaf): Point => ahead(foot, heading, lengthCm * belly)
const tip = (of: Leaf): Point => ahead(middle(of), of.heading + of.bend, of.lengthCm * (1 - of.belly))
const cheek = (of: Leaf, to: -1 | 1): Point =>
	ahead(middle(of), of.heading + of.bend / 2 + (to * Math.PI) / 2, of.widthCm)

/** A quadratic curve reaches half way to its control point: the leaf is `widthCm` wide in all. */
export const blade = (of: Leaf): Line => closed(of.foot, [cheek(of, -1), tip(of)], [cheek(of, 1), of.foot])

export const leftHalf = (of: Leaf): Line => closed(of.foot, [cheek(of, -1), tip(of)], [middle(of), of.foot])
export const rightHalf = (of: Leaf): Line => closed(of.foot, [middle(of), tip(of)], [cheek(of, 1), of.foot])

/** A streak of light along the left half. */
export const gleam = (of: Leaf): Line => {
	const at = (share: number) => cheek({ ...of, widthCm: of.widthCm * share }, -1)
	return closed(of.foot, [at(0.62), tip(of)], [at(0.3), of.foot])
}

export const midrib = (of: Leaf): Line => line(of.foot, [middle(of), tip(of)])

/** A drop that is round at its far end: a floret, a petal, a leaf of boxwood. One cubic curve of which it is the loop. */
export const drop = (foot: Point, heading: number, lengthCm: number, widthCm: number): Line => {
	const over = ahead(foot, heading, lengthCm / 0.75)
	const aside = (to: -1 | 1) => ahead(over, heading + (to * Math.PI) / 2, widthCm / 0.577)
	return line(foot, [aside(-1), aside(1), foot])
}
