import { kept, type State } from '../proposal/state'
import { type Group, groups } from './group'

/** In which order the rows of a group stand. */
export const sorts = ['answer by', 'days waited', 'name', 'value', 'margin'] as const
export type Sort = (typeof sorts)[number]

const states: readonly State['is'][] = [...kept, 'lapsed']
const kinds = ['business', 'household'] as const
const longest = 60

/** Which rows of a season's ledger are asked for, and in which order; what is empty asks for all. */
export type LedgerAsk = {
	readonly show: Group | State['is'] | ''
	readonly kind: (typeof kinds)[number] | ''
	readonly palette: string
	readonly name: string
	readonly sort: Sort
}

export const everyRow: LedgerAsk = { show: '', kind: '', palette: '', name: '', sort: 'answer by' }

const among = <T extends string>(known: readonly T[], text: string | undefined): T | undefined =>
	known.find((each) => each === text)

type Given = Readonly<Record<string, string | readonly string[] | undefined>>

const words = (text: string | undefined) => (text ?? '').trim().normalize('NFC').slice(0, longest)

/** What the address of the page asks for; what it cannot mean asks for nothing. */
export function ledgerAsk(given: Given): LedgerAsk {
	const of = (name: keyof LedgerAsk) => [given[name] ?? []].flat()[0]
	return {
		show: among([...groups, ...states], of('show')) ?? '',
		kind: among(kinds, of('kind')) ?? '',
		palette: words(of('palette')),
		name: words(of('name')),
		sort: among(sorts, of('sort')) ?? everyRow.sort,
	}
}

/** The same as the query of an address: only what is asked for stands in it. */
export function ledgerQuery(ask: LedgerAsk, more: Readonly<Record<string, string>> = {}): string {
	const query = new URLSearchParams()
	if (ask.show !== '') query.set('show', ask.show)
	if (ask.kind !== '') query.set('kind', ask.kind)
	if (ask.palette !== '') query.set('palette', ask.palette)
	if (ask.name !== '') query.set('name', ask.name)
	if (ask.sort !== everyRow.sort) query.set('sort', ask.sort)
	for (const [name, value] of Object.entries(more)) query.set(name, value)
	return query.toString()
}

/** Whether some rows may be left out. */
export const isNarrowed = ({ show, kind, palette, name }: LedgerAsk): boolean =>
	[show, kind, palette, name].some((each) => each !== '')
