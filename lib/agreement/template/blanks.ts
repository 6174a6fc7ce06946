/** What a clause may leave to be filled, written in braces: {client}. */
export const blanks = [
	'studio',
	'client',
	'start',
	'end',
	'places',
	'containers',
	'visits',
	'prices',
	'total',
	'instalments',
	'waters',
	'sold',
	'lent',
	'lights down',
	'notice',
	'law',
] as const
export type Blank = (typeof blanks)[number]

export const blankShape = /\{([^{}\n]*)\}/g
const known: readonly string[] = blanks
const isBlank = (name: string): name is Blank => known.includes(name)

/** The blanks of a text, each once, and what stands in braces and is none. */
export function blanksIn(text: string): { readonly known: readonly Blank[]; readonly unknown: readonly string[] } {
	const names = [...new Set([...text.matchAll(blankShape)].map(([, name = '']) => name))]
	return { known: names.filter(isBlank), unknown: names.filter((name) => !isBlank(name)) }
}
