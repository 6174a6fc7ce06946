import type { Scene, SceneLine, ScenePot } from '../../picture/scene'
import type { Offer, OfferLine } from './offer'

/** What a picture of an offer shows: one option of one place, with what was added and without what was left out. */
export type Shown = {
	/** By id; the first of the offer where it is empty. */
	readonly place: string
	/** Null shows the containers empty. */
	readonly option: string | null
	readonly extras: readonly string[]
	readonly leftOut: readonly string[]
	readonly hour: Scene['hour']
	readonly measure: Scene['measure']
}

function sceneLine({ name, role, hex, look }: OfferLine): SceneLine[] {
	if (look === undefined) return []
	const { pieces: count, ...rest } = look
	return [{ ...rest, name, role, hex, count }]
}

/** An extra's lines over the containers of its place, as evenly as whole pieces can be. */
function extrasFor(offer: Offer, place: string, { extras }: Shown, pots: number, index: number): SceneLine[] {
	return offer.extras
		.filter((extra) => extra.place === place && extras.includes(extra.key))
		.flatMap(({ lines }) => lines.flatMap(sceneLine))
		.map((line) => ({ ...line, count: share(line.count, pots, index) }))
		.filter(({ count }) => count > 0)
}

const share = (count: number, pots: number, index: number) => Math.floor(count / pots) + (index < count % pots ? 1 : 0)

/** The scene of a place; undefined where the revision was made before there were pictures, or nothing stands there. */
export function sceneOf(offer: Offer, shown: Shown): Scene | undefined {
	const place = shown.place === '' ? offer.places[0] : offer.places.find(({ id }) => id === shown.place)
	const standing = offer.containers.filter(({ id, place: at }) => at === place?.id && !shown.leftOut.includes(id))
	const drawn = standing.flatMap(({ vessel, ...rest }) => (vessel === undefined ? [] : [{ ...rest, vessel }]))
	if (place === undefined || drawn.length === 0) return undefined
	const option = offer.options.find(({ key }) => key === shown.option)
	const pots = drawn.map(({ id, name, vessel }, index): ScenePot => {
		const { madeOf, colour, stands, sillToGlassCm, ...measures } = vessel
		const lines = option?.pots.find(({ container }) => container === id)?.lines ?? []
		const all = [...lines.flatMap(sceneLine), ...extrasFor(offer, place.id, shown, drawn.length, index)]
		return { name, vessel: measures, madeOf, colour, stands, sillToGlassCm, lines: all }
	})
	const { quarter } = offer.season
	return { quarter, hour: shown.hour, wall: place.wall, door: place.door, measure: shown.measure, pots }
}

/** Lights are part of what is shown: there is an evening to look at. */
export const hasLights = ({ pots }: Scene): boolean =>
	pots.some(({ lines }) => lines.some(({ form }) => form === 'lights'))
