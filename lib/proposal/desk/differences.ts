import type { Json } from '../../record/canonical'
import { type Field, fieldsOf, inWords, type Names } from './places-in'

/** A field that two texts of a draft have otherwise; null where one lacks it. */
export type Difference = { readonly at: string; readonly mine: string | null; readonly theirs: string | null }

/** Each step by its name where both have the same there, else by its number. */
function where(mine: Field | undefined, theirs: Field | undefined): string {
	const [one, other] = [mine ?? theirs, theirs ?? mine]
	return inWords(one?.named.map((name, step) => (name === other?.named[step] ? name : (one.counted[step] ?? ''))) ?? [])
}

/** Where two drafts differ, field by field, in the order of the first. */
export function differences(mine: Json, theirs: Json, names: Names = new Map()): Difference[] {
	const [a, b] = [fieldsOf(mine, names), fieldsOf(theirs, names)]
	return [...new Set([...a.keys(), ...b.keys()])]
		.map((path) => ({ path, mine: a.get(path), theirs: b.get(path) }))
		.filter((field) => field.mine?.says !== field.theirs?.says)
		.map((field) => ({
			at: where(field.mine, field.theirs),
			mine: field.mine?.says ?? null,
			theirs: field.theirs?.says ?? null,
		}))
}
