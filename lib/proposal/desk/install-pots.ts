import type { OfferLine } from '../offer/offer'

export type InstallPot = { readonly name: string; readonly words: string; readonly lines: readonly OfferLine[] }
/** Pots of one size that hold the same, told once: each of them gets all of `lines`. */
export type SamePots = Omit<InstallPot, 'name'> & { readonly names: readonly string[] }

/** In the order of the first of each. */
export function samePots(pots: readonly InstallPot[]): SamePots[] {
	const groups = new Map<string, SamePots>()
	for (const { name, words, lines } of pots) {
		const key = JSON.stringify([words, lines])
		groups.set(key, { names: [...(groups.get(key)?.names ?? []), name], words, lines })
	}
	return [...groups.values()]
}
