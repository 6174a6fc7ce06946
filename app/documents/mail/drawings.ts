import type { Frame } from '@/lib/picture/place/frame'
import type { Scene } from '@/lib/picture/scene'
import { describeScene } from '@/lib/picture/words/describe-scene'
import type { Offer } from '@/lib/proposal/offer/offer'
import { type Shown, sceneOf } from '@/lib/proposal/offer/scene-of'
import { paletteAt, palettesOf } from '@/lib/proposal/picked/palettes'
import type { PlaceKeys } from '@/lib/proposal/picked/place-keys'

/** One picture of a mail, not drawn yet. */
export type Drawing = {
	readonly scene: Scene
	/** In words, for whoever does not see it. */
	readonly alt: string
	/** What stands under it; null where it is the only one. */
	readonly caption: string | null
}

/** The pictures of a mail: rows of so many side by side. */
export type Drawings = { readonly across: number; readonly frame: Frame; readonly each: readonly Drawing[] }

type Named = { readonly name: string; readonly isOne: boolean; readonly frame: Frame }
type Picked = Pick<Shown, 'option' | 'extras' | 'leftOut'>
type Chosen = Picked & { readonly places: PlaceKeys }

const whole = { ratio: 1.8, zoom: 'place' } as const
const near = { ratio: 0.8, zoom: 'pot' } as const
const mostPlaces = 3

function drawing(offer: Offer, shown: Picked & Pick<Shown, 'place'>, { name, isOne, frame }: Named): Drawing[] {
	const scene = sceneOf(offer, { ...shown, hour: 'day', measure: 'none' })
	if (scene === undefined) return []
	const seen = frame.zoom === 'pot' ? { ...scene, pots: scene.pots.slice(0, 1) } : scene
	return [{ scene, alt: `${name}. ${describeScene(seen)}`, caption: isOne ? null : name }]
}

/** What was chosen, before each wall the palette that stands there; undefined of a revision from before there were pictures. */
export function chosenDrawings(offer: Offer, chosen: Chosen): Drawings | undefined {
	const palettes = palettesOf(offer, chosen)
	if (palettes === undefined) return undefined
	const isOne = offer.places.length === 1
	const named = (place: string, palette: string) => (palettes.places.size === 0 ? place : `${place}: ${palette}`)
	const each = offer.places.slice(0, mostPlaces).flatMap(({ id, name: place }) => {
		const { key, name: palette } = paletteAt(palettes, id)
		const name = isOne ? palette : named(place, palette)
		return drawing(offer, { ...chosen, option: key, place: id }, { name, isOne, frame: whole })
	})
	return each.length === 0 ? undefined : { across: 1, frame: whole, each }
}

/** What may be chosen: one palette before each wall, several side by side before the first. */
export function offeredDrawings(offer: Offer): Drawings | undefined {
	const { options } = offer
	const [only, ...more] = options
	const bare = { places: {}, extras: [], leftOut: [] }
	if (only !== undefined && more.length === 0) return chosenDrawings(offer, { ...bare, option: only.key })
	const each = options.flatMap(({ key, name }) =>
		drawing(offer, { ...bare, place: '', option: key }, { name, isOne: false, frame: near }),
	)
	return each.length === 0 ? undefined : { across: options.length === 3 ? 3 : 2, frame: near, each }
}
