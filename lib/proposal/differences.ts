import type { Json } from '../record/canonical'

/** A field that two texts of a draft have otherwise; null where one lacks it. */
export type Difference = { readonly at: string; readonly mine: string | null; readonly theirs: string | null }

function flat(value: Json, path: string, into: Map<string, string>): void {
	if (value !== null && typeof value === 'object') {
		for (const [key, inner] of Object.entries(value))
			flat(inner, path === '' ? key : `${path} · ${Number.isNaN(Number(key)) ? key : Number(key) + 1}`, into)
		return
	}
	into.set(path, String(value))
}

/** Where two drafts differ, field by field, in the order of the first. */
export function differences(mine: Json, theirs: Json): Difference[] {
	const [a, b] = [new Map<string, string>(), new Map<string, string>()]
	flat(mine, '', a)
	flat(theirs, '', b)
	return [...new Set([...a.keys(), ...b.keys()])]
		.map((at) => ({ at, mine: a.get(at) ?? null, theirs: b.get(at) ?? null }))
		.filter((field) => field.mine !== field.theirs)
}
