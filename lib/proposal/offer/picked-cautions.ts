import { type Palettes, paletteAt } from '../picked/palettes'
import type { Offer } from './offer'

type Picked = { readonly extras: readonly string[]; readonly leftOut: readonly string[] }

/**
 * The cautions of what is picked, in the order of the offer's own; all of them while no palette is. An offer of the
 * time when pots and extras did not keep theirs apart shows all as well.
 */
export function pickedCautions(offer: Offer, palettes: Palettes | undefined, { extras, leftOut }: Picked): string[] {
	if (palettes === undefined) return offer.cautions
	const staying = offer.containers.filter(({ id }) => !leftOut.includes(id))
	const holding = [
		...staying.flatMap(({ id, place }) => paletteAt(palettes, place).pots.filter(({ container }) => container === id)),
		...offer.extras.filter(({ key }) => extras.includes(key)),
	]
	const told = new Set(holding.flatMap(({ cautions }) => cautions ?? offer.cautions))
	return offer.cautions.filter((words) => told.has(words))
}
