import { z } from 'zod'
import type { PlaceKeys } from '../../proposal/picked/place-keys'
import { isId } from '../../units/id'

const prefix = 'at.'

/** The name under which the address of a page, and each row of buttons, carries what one place takes. */
export const fieldAt = (id: string): string => `${prefix}${id}`

/** What single places take, as a page's address says it; whatever names no place is passed over. */
export function placeKeysIn(query: Readonly<Record<string, string | readonly string[] | undefined>>): PlaceKeys {
	const named = Object.entries(query).flatMap(([name, value]) => {
		const [id, [key]] = [name.slice(prefix.length), [value ?? []].flat()]
		return name.startsWith(prefix) && isId(id) && key !== undefined ? [[id, key] as const] : []
	})
	return Object.fromEntries(named)
}

/** As an answer sends it: "<place> <key>" for each. */
export const placeEntries = (places: PlaceKeys): string[] => Object.entries(places).map(([id, key]) => `${id} ${key}`)

/** The place and the key of an entry; undefined for what is none. */
export function placeEntry(text: string): readonly [id: string, key: string] | undefined {
	const [id = '', key = '', ...more] = text.split(' ')
	return isId(id) && key !== '' && more.length === 0 ? [id, key] : undefined
}

const unclear = 'One of the palettes names no place. Go back to the design and choose again.'

/** What single places take, each named once. */
export const placesField = z
	.array(
		z
			.string()
			.max(80, unclear)
			.refine((text) => placeEntry(text) !== undefined, unclear),
	)
	.max(60)
	.transform((all) => all.map(placeEntry).filter((each) => each !== undefined))
	.refine((all) => new Set(all.map(([id]) => id)).size === all.length, {
		message: 'A place is named twice. Go back to the design and choose again.',
	})
	.transform((all): PlaceKeys => Object.fromEntries(all))
