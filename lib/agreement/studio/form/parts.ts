import type { Typed } from '../../../forms/read'

const rowOf = /^(season|part)\.(\d{1,2})\.([a-zA-Z]+|[a-z]+-[a-z]+)$/

export type Row = Record<string, string | readonly string[]>
export type Parts = Record<string, unknown> & { readonly season: readonly Row[]; readonly part: readonly Row[] }

/** As many seasons and dates as a form can hold. */
export const mostRows = { season: 12, part: 36 } as const

/** The boxes of the page as what they are of: rows of seasons, rows of dates, and the rest under its own name. */
export function formParts(typed: Typed): Parts {
	const rest: Record<string, unknown> = {}
	const rows = { season: new Map<number, Row>(), part: new Map<number, Row>() }
	for (const [name, value] of Object.entries(typed)) {
		const [, kind, number, box] = rowOf.exec(name) ?? []
		// Every list of ticks is sent, those of rows that are not there too.
		if (kind === 'season' && value.length === 0 && Array.isArray(value)) continue
		const within = kind === 'season' || kind === 'part' ? kind : undefined
		if (within === undefined || box === undefined || Number(number) >= mostRows[within]) rest[name] = value
		else rows[within].set(Number(number), { ...rows[within].get(Number(number)), [box]: value })
	}
	const inOrder = (of: Map<number, Row>) =>
		Array.from({ length: Math.max(-1, ...of.keys()) + 1 }, (_, index) => of.get(index) ?? {})
	return { ...rest, season: inOrder(rows.season), part: inOrder(rows.part) }
}

/** The lists of ticks that the form sends. */
export const termsLists: readonly string[] = [
	'without',
	...Array.from({ length: mostRows.season }, (_, index) => `season.${index}.container`),
]
