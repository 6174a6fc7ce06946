import { capital } from '../../format/words'
import type { Json } from '../../record/canonical'

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

/** What a part of a draft is called on the desk; numbers follow their lists. */
const names: Readonly<Record<string, string>> = {
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

/** "options · 1 · pots · 2 · lines · 3 · count" becomes "Palette 1, pot 2, line 3, count". */
function inWords(path: string): string {
	const steps = path.split(' · ').map((step) => names[step] ?? step)
	return capital(steps.join(', ').replace(/, (\d+)(?=,|$)/g, ' $1'))
}

/** Where two drafts differ, field by field, in the order of the first. */
export function differences(mine: Json, theirs: Json): Difference[] {
	const [a, b] = [new Map<string, string>(), new Map<string, string>()]
	flat(mine, '', a)
	flat(theirs, '', b)
	return [...new Set([...a.keys(), ...b.keys()])]
		.map((path) => ({ at: inWords(path), mine: a.get(path) ?? null, theirs: b.get(path) ?? null }))
		.filter((field) => field.mine !== field.theirs)
}
