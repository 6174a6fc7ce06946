import { expect, test } from 'vitest'
import { type Offer, offerSchema } from '@/lib/proposal/offer/offer'
import { pickedCautions } from '@/lib/proposal/offer/picked-cautions'
import { card, containerId, draft, facts, first, offerOf, placeId } from '../sample'

const cards = facts.cards.map((each) => (each.name === 'Right urn' ? card(2, 'Right urn', { walkLeftCm: 90 }) : each))
const offer = offerOf(draft, { ...facts, cards })
const [holly, pets] = ['Holly is poisonous if eaten; keep children from it.', 'Holly is poisonous to pets.']
const picks = 'Cone picks has small parts; keep it from small children and pets.'
const poison = 'If someone has eaten of it, call your poison line at once.'
const lights =
	'Lights are for outdoors and want a GFCI-protected outlet; no cord across a walk. They come down within 90 days.'
const greens = 'Greens dry out over the winter: keep them from heaters and open flames.'
const walk = 'Right urn leaves a narrow walk: ask the local authority for the width to be kept clear.'

test.each<{ name: string; option?: string; extras?: string[]; leftOut?: number[]; says: string[] }>([
	{ name: 'all of them while no palette is picked', says: [holly, pets, picks, poison, lights, greens, walk] },
	{ name: 'holly of the palette that has it', option: 'a', says: [holly, pets, poison, greens, walk] },
	{ name: 'none of it under the other palette', option: 'b', says: [greens, walk] },
	{ name: 'an extra once it is added', option: 'b', extras: ['lights', 'wreath'], says: [picks, lights, greens, walk] },
	{ name: 'nothing of a container that is left out', option: 'a', leftOut: [2, 3], says: [greens] },
])('$name', ({ option, extras = [], leftOut = [], says }) => {
	const found = offer.options.find(({ key }) => key === option)
	expect(
		pickedCautions(offer, found && { option: found, places: new Map() }, { extras, leftOut: leftOut.map(containerId) }),
	).toEqual(says)
})

test('an offer that was frozen before pots kept theirs still is one, and shows all', () => {
	const bare = <T extends { cautions?: unknown }>({ cautions: _, ...rest }: T) => rest
	const before: Offer = offerSchema.parse({
		...offer,
		options: offer.options.map((option) => ({ ...option, pots: option.pots.map(bare) })),
		extras: offer.extras.map(bare),
	})
	expect(
		pickedCautions(before, { option: first(before.options), places: new Map() }, { extras: [], leftOut: [] }),
	).toEqual(offer.cautions)
})

test('of the palette that each place takes', () => {
	const [, b] = offer.options
	const taken = { option: first(offer.options), places: new Map(b === undefined ? [] : [[placeId(2), b]]) }
	expect(pickedCautions(offer, taken, { extras: [], leftOut: [] })).toEqual([greens, walk])
})
