import { type Point, straight } from '../pen/path'
import { type Body, onPaper } from './body'

/** The front of a vessel with corners: from its near upper edge down to its foot on the ground. */
export type Face = {
	/** Half width at a share of the way down. */
	readonly half: (share: number) => number
	readonly y: (share: number) => number
}

export function faceOf({ top, bottom, topDepth, bottomDepth, height }: Body): Face {
	const [from, to] = [-height + onPaper(topDepth), onPaper(bottomDepth)]
	return { half: (share) => top + (bottom - top) * share, y: (share) => from + (to - from) * share }
}

/** Part of a face, between two shares across (−1 to 1) and two down (0 to 1). */
export function part({ half, y }: Face, [left, right]: Point, [upper, lower]: Point): string {
	const point = (across: number, down: number): Point => [half(down) * across, y(down)]
	return `${straight([point(left, upper), point(right, upper), point(right, lower), point(left, lower)])}Z`
}
