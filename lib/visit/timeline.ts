import type { Quarter } from '../season/season'
import type { Day } from '../units/day'

export type InSeason = { readonly quarter: Quarter; readonly year: number; readonly from: Day }
type Visited = {
	readonly id: string
	readonly season: InSeason
	/** Null for all of the client's places. */
	readonly place: string | null
	/** Of the visit, or when it was asked for. */
	readonly on: Day
}
type Designed = { readonly season: InSeason }

export type Chapter<V, D> = {
	readonly season: InSeason
	readonly design: D | null
	readonly places: readonly { readonly place: string | null; readonly visits: readonly V[] }[]
}

const keyOf = ({ quarter, year }: InSeason) => `${year} ${quarter}`

/** In the order of `items`, which keeps its order within each key. */
function grouped<T>(items: readonly T[], key: (item: T) => string): T[][] {
	const groups = new Map<string, T[]>()
	for (const item of items) groups.set(key(item), [...(groups.get(key(item)) ?? []), item])
	return [...groups.values()]
}

const latest = (a: Visited, b: Visited) => b.on.localeCompare(a.on) || b.id.localeCompare(a.id)

/** Visits by season and place, the newest first, each season with the design that went in; a design alone is a chapter too. */
export function timeline<V extends Visited, D extends Designed>(
	visits: readonly V[],
	designs: readonly D[],
): Chapter<V, D>[] {
	const seasons = grouped(
		[...visits, ...designs].map(({ season }) => season),
		keyOf,
	)
	return seasons
		.flatMap(([season]) => (season === undefined ? [] : [season]))
		.toSorted((a, b) => b.from.localeCompare(a.from))
		.map((season) => {
			const inIt = visits.filter((visit) => keyOf(visit.season) === keyOf(season)).toSorted(latest)
			const design = designs.find((each) => keyOf(each.season) === keyOf(season)) ?? null
			const places = grouped(inIt, ({ place }) => place ?? '')
			return { season, design, places: places.map((own) => ({ place: own[0]?.place ?? null, visits: own })) }
		})
}
