import type { DesignMaterial } from '../recipe/traits'
import type { Card } from './facts'

/** What is drawn of so many units of a material. */
export const lookOf = ({ form, secondHex, lengthCm, acrossCm, piecesPerUnit }: DesignMaterial, count: number) => ({
	...{ form, secondHex, lengthCm, acrossCm },
	pieces: Math.max(1, Math.round(count * piecesPerUnit)),
})

/** What is drawn of a container. */
export function vesselOf(card: Card) {
	const { shape, topCm, topDepthCm, bottomCm, bottomDepthCm, heightCm, wallCm, headspaceCm, soilDepthCm } = card
	const measures = { topCm, topDepthCm, bottomCm, bottomDepthCm, heightCm, wallCm, headspaceCm, soilDepthCm }
	const { wall: madeOf, colour, stands, sillToGlassCm } = card
	return { shape, ...measures, madeOf, colour, stands, sillToGlassCm }
}
