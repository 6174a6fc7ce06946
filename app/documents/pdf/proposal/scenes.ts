import type { Scene } from '@/lib/picture/scene'
import { hasLights, sceneOf } from '@/lib/proposal/offer/scene-of'
import { paletteAt, palettesOf } from '@/lib/proposal/picked/palettes'
import { placeName } from '@/lib/proposal/picked/place-name'
import type { ProposalPaper } from './input'

export type Captioned = { readonly caption: string; readonly scene: Scene }

/** As wide as the paper, and a little less than half as high. */
export const frame = { ratio: 2.1, zoom: 'place' } as const

const hours = { day: 'by day', evening: 'in the evening' } as const

/**
 * Each wall with what was approved before it, in the order of the offer: by day, and in the evening where lights are part
 * of it. None of a revision from before there were pictures.
 */
export function approvedScenes({ offer, approval }: Pick<ProposalPaper, 'offer' | 'approval'>): Captioned[] {
	const palettes = palettesOf(offer, approval)
	if (palettes === undefined) return []
	return offer.places.flatMap(({ id }) => {
		const { key, name } = paletteAt(palettes, id)
		const shown = { ...approval, place: id, option: key, measure: 'none' } as const
		const day = sceneOf(offer, { ...shown, hour: 'day' })
		if (day === undefined) return []
		const at = offer.places.length === 1 ? name : `${placeName(id, offer)}: ${name}`
		const each = hasLights(day) ? [day, { ...day, hour: 'evening' } as const] : [day]
		return each.map((scene) => ({ scene, caption: `${at}, ${hours[scene.hour]}` }))
	})
}
