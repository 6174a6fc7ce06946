import { type Shape, usualHeadspaceCm, usualWallCm, type Vessel, type WallMaterial } from '@/lib/container/card'
import type { SceneLine, ScenePot } from '@/lib/picture/scene'
import { hex } from '@/lib/units/hex'

type Outer = readonly [top: number, bottom: number, high: number, topDepth?: number]

const pots: Record<Shape, { readonly outer: Outer; readonly madeOf: WallMaterial; readonly colour: string }> = {
	round: { outer: [46, 33, 51], madeOf: 'resin', colour: '#3a3e42' },
	square: { outer: [61, 51, 61, 61], madeOf: 'resin', colour: '#d9d5cb' },
	rectangular: { outer: [76, 70, 51, 36], madeOf: 'wood', colour: '#7a5a3f' },
	bowl: { outer: [66, 24, 28], madeOf: 'terracotta', colour: '#b5694a' },
	trough: { outer: [102, 97, 46, 36], madeOf: 'metal', colour: '#6f7679' },
	'window box': { outer: [91, 89, 23, 23], madeOf: 'wood', colour: '#5b4636' },
	urn: { outer: [51, 28, 56], madeOf: 'cast stone', colour: '#b9b4a8' },
	column: { outer: [41, 36, 86, 41], madeOf: 'cast stone', colour: '#8d8a83' },
}

const vesselOf = (shape: Shape, [topCm, bottomCm, heightCm, topDepthCm]: Outer, madeOf: WallMaterial): Vessel => ({
	shape,
	topCm,
	topDepthCm: topDepthCm ?? null,
	bottomCm,
	bottomDepthCm: topDepthCm === undefined ? null : (topDepthCm * bottomCm) / topCm,
	heightCm,
	wallCm: usualWallCm[madeOf],
	headspaceCm: usualHeadspaceCm,
	soilDepthCm: null,
})

type More = { readonly madeOf?: WallMaterial; readonly colour?: string; readonly stands?: ScenePot['stands'] }

/** A pot of a usual size of its shape, its lines grown roughly with its opening. */
export function potOf(shape: Shape, lines: readonly SceneLine[], more: More = {}): ScenePot {
	const { outer, madeOf, colour } = pots[shape]
	const made = more.madeOf ?? madeOf
	const [top, , , depth = top] = outer
	const grown = Math.max(0.6, (top * depth) / (46 * 46)) ** 0.75
	return {
		name: `the ${shape}`,
		vessel: vesselOf(shape, outer, made),
		madeOf: made,
		colour: hex(more.colour ?? colour),
		stands: more.stands ?? (shape === 'window box' ? 'against a wall' : 'all round'),
		sillToGlassCm: shape === 'window box' ? 35 : null,
		lines: lines.map((line) => {
			const by = line.role === 'accent' ? Math.sqrt(grown) : grown
			return { ...line, count: line.count <= 1 ? line.count : Math.round(line.count * by) }
		}),
	}
}

/** The same of a size of one's own, in cm. */
export const sizedPot = (pot: ScenePot, outer: Outer): ScenePot => ({
	...pot,
	vessel: vesselOf(pot.vessel.shape, outer, pot.madeOf),
})
