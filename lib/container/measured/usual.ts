import type { Shape } from '../card'

type Outer = {
	readonly topCm: number
	readonly topDepthCm: number
	readonly bottomCm: number
	readonly bottomDepthCm: number
	readonly heightCm: number
}

const outer = (
	topCm: number,
	topDepthCm: number,
	bottomCm: number,
	bottomDepthCm: number,
	heightCm: number,
): Outer => ({
	topCm,
	topDepthCm,
	bottomCm,
	bottomDepthCm,
	heightCm,
})

/** A common size of each shape (common practice): what is drawn, in proportion, where a measure is still to be taken. */
export const usualCm: Readonly<Record<Shape, Outer>> = {
	round: outer(46, 46, 34, 34, 41),
	square: outer(46, 46, 38, 38, 46),
	rectangular: outer(91, 41, 84, 34, 46),
	bowl: outer(51, 51, 18, 18, 20),
	trough: outer(107, 31, 104, 28, 36),
	'window box': outer(91, 20, 87, 17, 20),
	urn: outer(51, 51, 31, 31, 61),
	column: outer(36, 36, 36, 36, 91),
}
