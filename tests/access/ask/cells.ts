import { v7 } from 'uuid'
import { type ClientKey, columnOf, type PersonName, persons } from '../site/people'
import { allNamed, type Things } from '../site/things'
import type { Row, Said, Thing } from '../table/rows'

export type ByClient = Readonly<Record<'bakery' | 'dental' | 'vet' | 'fieldstone', Things>>
type Known = keyof ByClient

/** One request of the table: who, where, with the id of whose thing, and what is to be said. */
export type Cell = {
	readonly person: PersonName
	readonly which: string
	readonly path: string
	readonly id: string
	readonly things: Things
	readonly expected: Said
	readonly writes: boolean
}

const own: Readonly<Record<PersonName, readonly Known[]>> = {
	designer: ['bakery'],
	helper: ['bakery'],
	approver: ['bakery'],
	looker: ['bakery'],
	payer: ['dental'],
	'other approver': ['dental'],
	'two doors': ['vet', 'fieldstone'],
	'signed out': ['bakery'],
	'token holder': ['bakery'],
	expired: ['bakery'],
	idle: ['bakery'],
	ended: ['bakery'],
}
const foreign: Readonly<Partial<Record<PersonName, Known>>> = {
	'other approver': 'bakery',
	payer: 'bakery',
	'two doors': 'bakery',
}

/** What is no id of ours, and what is no id at all. */
export const missing = {
	absent: v7(),
	'no id': 'not-a-uuid',
	upwards: '..%2F..%2Fstudio',
	nul: '%00',
	long: 'a'.repeat(5000),
} as const

/** The id of what a row is about; null where there is none. */
export const idIn = (thing: Thing, things: Things): string | null =>
	({
		nothing: '',
		recipe: things.recipe,
		client: things.client,
		proposal: things.proposal,
		'answered proposal': things.answered,
		season: things.season,
		visit: things.visit,
		photo: things.photo,
		agreement: things.agreement,
		invoice: things.invoice,
	})[thing]

/** The address with an id in it, and what a page needs beside it. */
export function pathOf(
	{ route, path }: Pick<Row, 'route' | 'path'>,
	id: string,
	{ client, place, revision }: Things,
): string {
	const address = (path ?? route.replace(/\[[^\]]+\]/, id))
		.replace('[revision]', `${revision.slice(0, 16)}.svg`)
		.replace('[size]', 'small.jpg')
	if (route.endsWith('/start')) return `${address}?client=${client}`
	return route.endsWith('/container') ? `${address}?place=${place}` : address
}

function expectedOf(row: Row, person: PersonName, client: ClientKey | null): Said {
	if (row.of === 'nothing' && person === 'two doors' && row.twoDoors !== undefined) return row.twoDoors
	return row.says[columnOf(person, client)]
}

function knownCells(row: Row, person: PersonName, all: ByClient): Cell[] {
	const named: (readonly [string, Known])[] =
		row.of === 'nothing'
			? [['', 'bakery']]
			: [
					...own[person].map((key) => [`own ${key}`, key] as const),
					[`foreign ${foreign[person] ?? 'dental'}`, foreign[person] ?? 'dental'],
				]
	return named.flatMap(([which, key]) => {
		const client = row.of === 'nothing' || row.of === 'season' || row.of === 'recipe' ? null : key
		const id = idIn(row.of, all[key])
		if (id === null) return []
		return {
			...{ person, which, id, things: all[key], path: pathOf(row, id, all[key]) },
			expected: expectedOf(row, person, client),
			writes: row.writes?.includes(columnOf(person, client)) ?? false,
		}
	})
}

function missingCells(row: Row, person: PersonName, all: ByClient): Cell[] {
	if (row.of === 'nothing') return []
	const isIn = columnOf(person, null) !== 'signed out'
	const [key = 'bakery'] = own[person]
	return Object.entries(missing).map(([which, id]) => ({
		...{ person, which, id, things: allNamed(all[key], id), path: pathOf(row, id, all[key]) },
		expected: isIn ? 'hidden' : row.says['signed out'],
		writes: false,
	}))
}

/** Every cell of a row: everybody, with their own things, another's, none, and what is no id. */
export const cellsOf = (row: Row, all: ByClient): Cell[] =>
	persons.flatMap((person) => [...knownCells(row, person, all), ...missingCells(row, person, all)])
