import { capital } from '../../format/words'
import type { Json } from '../../record/canonical'

/** Names of containers, materials and places by their ids. */
export type Names = ReadonlyMap<string, string>

/** A field of a draft: its value, and step by step where it stands, by name and by number. */
export type Field = { readonly says: string; readonly named: readonly string[]; readonly counted: readonly string[] }
type At = Omit<Field, 'says'> & { readonly path: string }

/** What a part of a draft is called on the desk. */
const words: Readonly<Record<string, string>> = {
	options: 'palette',
	palette: 'colour',
	pots: 'pot',
	lines: 'line',
	containers: 'container',
	extras: 'extra',
	window: 'goes in',
	from: 'from',
	to: 'until',
	answerBy: 'answer by',
	hex: 'colour',
	isNew: 'new this season',
	mayLeaveOut: 'may be left out',
	takeDown: 'taken down at the end',
	supplementCents: 'supplement',
	cents: 'price of the season',
	is: 'kind',
}

const isList = (value: Json): value is readonly Json[] => Array.isArray(value)
const isThing = (value: Json): value is { readonly [key: string]: Json } =>
	value !== null && typeof value === 'object' && !isList(value)

/** A part by what it holds, "noble fir", or by its own name, "palette “Copper and plum”". */
function called(value: Json, word: string, names: Names): string | undefined {
	if (!isThing(value)) return undefined
	const known = [value.container, value.material, value.id].map((id) => names.get(String(id))).find(Boolean)
	return known ?? (typeof value.name === 'string' && value.name !== '' ? `${word} “${value.name}”` : undefined)
}

function walk(value: Json, { path, named, counted }: At, names: Names, into: Map<string, Field>): void {
	const under = (key: string | number) => (path === '' ? String(key) : `${path}.${key}`)
	if (isList(value)) {
		const word = counted.at(-1) ?? ''
		value.forEach((inner, index) => {
			const number = `${word} ${index + 1}`
			const name = called(inner, word, names) ?? number
			const at = { named: [...named.slice(0, -1), name], counted: [...counted.slice(0, -1), number] }
			walk(inner, { path: under(index), ...at }, names, into)
		})
	} else if (isThing(value)) {
		for (const [key, inner] of Object.entries(value)) {
			const word = words[key] ?? key
			walk(inner, { path: under(key), named: [...named, word], counted: [...counted, word] }, names, into)
		}
	} else into.set(path, { says: names.get(String(value)) ?? String(value), named, counted })
}

/** Every field of a draft by its path, "options.0.pots.1.lines.6.count". */
export function fieldsOf(draft: Json, names: Names): Map<string, Field> {
	const into = new Map<string, Field>()
	walk(draft, { path: '', named: [], counted: [] }, names, into)
	return into
}

/** "Palette “Copper and plum”, Left urn, noble fir, count" */
export const inWords = (steps: readonly string[]): string => capital(steps.join(', '))
