import type { Offer } from './offer'

/** A part of a proposal that a change can be asked for, by the key that the form sends. */
export type ChangePart = { readonly key: string; readonly name: string }

export function changeParts({ options, containers, extras }: Offer): ChangePart[] {
	return [
		{ key: 'whole', name: 'The whole design' },
		...containers.map(({ id, name }) => ({ key: `container ${id}`, name })),
		...options.map(({ key, name }) => ({ key: `option ${key}`, name: `Palette “${name}”` })),
		...extras.map(({ key, name }) => ({ key: `extra ${key}`, name: `Extra “${name}”` })),
	]
}

export type AskedNote = { readonly part: string; readonly words: string }

/** Notes by the name of the part that each is about; undefined when one is about a part that is not offered. */
export function namedNotes(offer: Offer, notes: readonly AskedNote[]): { about: string; words: string }[] | undefined {
	const names = new Map(changeParts(offer).map(({ key, name }) => [key, name]))
	const named = notes.map(({ part, words }) => ({ about: names.get(part) ?? '', words }))
	return named.every(({ about }) => about !== '') ? named : undefined
}
