import type { Offer } from '../offer/offer'

/** A place's name, with its address where another has the same. */
export function placeName(of: string, { places }: Pick<Offer, 'places'>): string {
	const found = places.find(({ id }) => id === of)
	if (found === undefined) return ''
	const isAlone = places.filter(({ name }) => name === found.name).length === 1
	return isAlone ? found.name : `${found.name}, ${found.address}`
}
