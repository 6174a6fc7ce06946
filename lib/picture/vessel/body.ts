import { isRound, type Shape, type Vessel, type WallMaterial } from '../../container/card'
import type { Hex } from '../../units/hex'
import { clamp } from '../pen/n'
import { tilt } from '../pen/pen'
import type { ScenePot } from '../scene'

/** A vessel as it is drawn: halves of what is across, in cm; its foot's middle at the origin, its rim at `-height`. */
export type Body = {
	readonly shape: Shape
	readonly isRound: boolean
	readonly madeOf: WallMaterial
	readonly colour: Hex
	readonly top: number
	readonly bottom: number
	readonly topDepth: number
	readonly bottomDepth: number
	readonly height: number
	/** Thickness of the rim as it shows. */
	readonly lip: number
	readonly headspace: number
}

/** A card may be half filled in: what cannot be drawn is taken for the nearest that can. */
const sound = (cm: number | null, otherwise: number): number =>
	cm === null || !Number.isFinite(cm) || cm <= 0 ? otherwise : clamp(cm, 3, 600)

export function bodyOf({ vessel, madeOf, colour }: Pick<ScenePot, 'vessel' | 'madeOf'> & { colour: Hex }): Body {
	const round = isRound(vessel.shape)
	const topCm = sound(vessel.topCm, 40)
	const bottomCm = sound(vessel.bottomCm, topCm * 0.75)
	const topDepthCm = round ? topCm : sound(vessel.topDepthCm, topCm)
	const bottomDepthCm = round ? bottomCm : sound(vessel.bottomDepthCm, (topDepthCm * bottomCm) / topCm)
	const height = sound(vessel.heightCm, topCm)
	return {
		shape: vessel.shape,
		isRound: round,
		madeOf,
		colour,
		top: topCm / 2,
		bottom: bottomCm / 2,
		topDepth: topDepthCm / 2,
		bottomDepth: bottomDepthCm / 2,
		height,
		lip: clamp(sound(vessel.wallCm, 1), 0.9, Math.min(topCm, topDepthCm) / 6),
		headspace: clamp(Number.isFinite(vessel.headspaceCm) ? vessel.headspaceCm : 5, 0, height / 2),
	}
}

/** Half a depth as height on paper. */
export const onPaper = (halfDepth: number): number => halfDepth * tilt

/** Inner half width and half depth at the rim. */
export const innerOf = ({ top, topDepth, lip }: Body): { halfWidth: number; halfDepth: number } => ({
	halfWidth: Math.max(1, top - lip),
	halfDepth: Math.max(1, topDepth - lip),
})

/** The card with the measures that are drawn, so that heights can be reckoned from it. */
export function soundPot(
	{ vessel, sillToGlassCm }: Pick<ScenePot, 'vessel' | 'sillToGlassCm'>,
	{ top, bottom, topDepth, bottomDepth, height, headspace, isRound }: Body,
): Vessel & { readonly sillToGlassCm: number | null } {
	return {
		...vessel,
		topCm: top * 2,
		bottomCm: bottom * 2,
		topDepthCm: isRound ? null : topDepth * 2,
		bottomDepthCm: isRound ? null : bottomDepth * 2,
		heightCm: height,
		wallCm: clamp(vessel.wallCm, 0, Math.min(top, bottom, topDepth, bottomDepth) * 0.8),
		headspaceCm: headspace,
		soilDepthCm: vessel.soilDepthCm === null ? null : clamp(vessel.soilDepthCm, 0, height),
		sillToGlassCm: sillToGlassCm === null ? null : clamp(sillToGlassCm, 0, 500),
	}
}
