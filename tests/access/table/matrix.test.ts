import { beforeAll, describe, expect, it } from 'vitest'
import { verdict } from '@/lib/access/decide'
import { bodyFor, formOf } from '../ask/bodies'
import { actionNamed, builtActions, builtRoutes } from '../ask/build'
import { type ByClient, type Cell, cellsOf } from '../ask/cells'
import { asParts } from '../ask/crawl'
import { called, posted, urlencoded } from '../ask/forms'
import { outcomeOf, outcomeOfCall, outcomeOfParts } from '../ask/outcome'
import { type Answer, inParallel, type Sending } from '../ask/send'
import { tally } from '../ask/tally'
import { open } from '../site/here'
import { columnOf } from '../site/people'
import { snapshot, snapshotAtRest } from '../site/snapshot'
import { draftOf, thingsOf } from '../site/things'
import { actionRows, actionSays, columns, type Row, rows, type Said } from './rows'

const atOnce = 6
let all: ByClient
let draft: unknown
let before: Record<string, string>
let mails: number
const tried = tally((cells) => `access matrix: ${cells} cells tried`)

beforeAll(async () => {
	const { folder, cast } = open.site
	const of = (key: keyof ByClient) => thingsOf(folder, cast, key)
	all = { bakery: of('bakery'), dental: of('dental'), vet: of('vet'), fieldstone: of('fieldstone') }
	draft = draftOf(folder, all.bakery.proposal)
	before = await snapshotAtRest(folder)
	mails = open.postbox.letters.length
})

type Try = {
	readonly cell: Cell
	readonly expected: Said
	readonly sending?: Sending
	readonly path?: string
	readonly how?: string
}

/** Asks for all of them, names each that was told something else, and looks whether anything has changed. */
async function tryAll(tries: readonly Try[], read: (answer: Answer) => string = outcomeOf): Promise<void> {
	const wrong: string[] = []
	await inParallel(tries, atOnce, async ({ cell, sending = {}, path = cell.path, expected, how = '' }) => {
		const said = read(await open.ask(cell.person, path, sending))
		tried()
		if (said !== expected)
			wrong.push(`${cell.person}, ${cell.which}, ${how} ${path.slice(0, 120)}: ${said} instead of ${expected}`)
	})
	expect(wrong).toEqual([])
	expect(snapshot(open.site.folder)).toEqual(before)
	expect(open.postbox.letters.length).toBe(mails)
}

const handlers = new Set(
	builtRoutes()
		.filter(({ is }) => is === 'handler')
		.map(({ route }) => route),
)
const isPage = ({ route }: Row) => !handlers.has(route)
const thingIn = (route: string) =>
	route.includes('[client]') ? 'client' : route.includes('[proposal]') ? 'proposal' : 'nothing'
const hasMethod = (row: Row, method: Row['method']) =>
	rows.some((each) => each.route === row.route && each.path === row.path && each.method === method)

describe('the table and the build', () => {
	it('has a row for every route, and no row without a route', () => {
		const built = new Set(builtRoutes().map(({ route }) => route))
		expect([...new Set(rows.map(({ route }) => route))].toSorted()).toEqual([...built].toSorted())
	})

	it('has a row for every server action, and no row without an action', () => {
		const names = builtActions().map(({ name }) => name)
		expect(actionRows.map(({ name }) => name).toSorted()).toEqual(names.toSorted())
	})

	const opens: readonly Said[] = ['page', 'data', 'elsewhere']
	const named = [
		...rows,
		...actionRows.map(({ name, act }) => ({ method: 'action', route: name, act, says: actionSays })),
	]
	it.each(named)('$method $route opens no door that the table of rights keeps shut', ({ act, says }) => {
		if (act === null) return
		for (const column of columns) {
			if (opens.includes(says[column])) expect([column, verdict(column, act)]).toEqual([column, 'may'])
			if (says[column] === 'forbidden') expect([column, verdict(column, act)]).toEqual([column, 'forbidden'])
		}
	})
})

const titled = (some: readonly Row[]) => some.map((row) => ({ row, title: `${row.method} ${row.path ?? row.route}` }))
const shown = rows.filter(({ method }) => method === 'GET')
const taken = rows.filter(({ method }) => method === 'POST')

describe('says to everybody what the table says', () => {
	it.each(titled(rows))('$title', async ({ row }) => {
		const post = (cell: Cell): Sending => ({ method: 'POST', ...bodyFor(row, cell.things, draft) })
		const quiet = cellsOf(row, all).filter(({ writes }) => !writes)
		const tries = quiet.map((cell) => ({
			cell,
			expected: cell.expected,
			sending: row.method === 'GET' ? {} : post(cell),
		}))
		await tryAll(tries)
	})
})

describe('answers HEAD as it answers GET', () => {
	it.each(titled(shown))('$title', async ({ row }) => {
		const sending = { method: 'HEAD' }
		const head = (cell: Cell) => row.head?.[columnOf(cell.person, null)] ?? cell.expected
		await tryAll(cellsOf(row, all).map((cell) => ({ cell, expected: head(cell), sending })))
	})
})

describe('takes no plain form where it only shows', () => {
	it.each(titled(shown.filter((row) => !hasMethod(row, 'POST'))))('$title', async ({ row }) => {
		const otherwise = (cell: Cell) => row.posted ?? (isPage(row) ? cell.expected : 'no method')
		const sending = { method: 'POST', ...urlencoded([['words', 'none']]) }
		await tryAll(cellsOf(row, all).map((cell) => ({ cell, expected: otherwise(cell), sending })))
	})
})

/** What every one of `methods` is told that the address does not know it. */
async function knowsNot(row: Row, methods: readonly string[]): Promise<void> {
	const tries = methods.flatMap((method) =>
		cellsOf(row, all).map((cell) => ({ cell, how: method, expected: 'no method' as const, sending: { method } })),
	)
	await tryAll(tries)
}

describe('has nothing to show where it only takes', () => {
	it.each(titled(taken.filter((row) => !hasMethod(row, 'GET'))))('$title', async ({ row }) => {
		await knowsNot(row, ['GET', 'HEAD'])
	})
})

describe('knows no other method', () => {
	it.each(titled(rows.filter((row) => row.method === 'GET' || !hasMethod(row, 'GET'))))('$title', async ({ row }) => {
		await knowsNot(row, ['PUT', 'PATCH', 'DELETE', 'OPTIONS'])
	})
})

describe('says the same of the parts of a page', () => {
	const pages = shown.filter((row) => isPage(row) && !row.route.startsWith('/_'))
	it.each(titled(pages))('$title', async ({ row }) => {
		const sending = { headers: { rsc: '1' } }
		const tries = cellsOf(row, all).map((cell) => ({
			cell,
			expected: cell.expected,
			path: asParts(cell.path),
			sending,
		}))
		await tryAll(tries, outcomeOfParts)
	})
})

/** A row for the pages whose forms carry an action: with every id of a thing in the form and in the address. */
const carrierOf = (name: string): Row => {
	const [route = '/'] = actionNamed(name).routes
	return {
		route,
		method: 'POST',
		act: null,
		of: route.includes('[season]') ? 'season' : thingIn(route),
		says: actionSays,
	}
}

describe.each(actionRows)('action $name', ({ name }) => {
	const { id } = actionNamed(name)
	const tries = (how: typeof called) =>
		cellsOf(carrierOf(name), all)
			.filter(({ person }) => person !== 'designer')
			.map((cell) => ({
				cell,
				expected: cell.expected,
				sending: { method: 'POST', ...how(id, formOf(name, cell.things)) },
			}))

	it('is refused to all but the designer, with scripts', async () => {
		await tryAll(tries(called), outcomeOfCall)
	})

	it('is refused to all but the designer, without scripts', async () => {
		await tryAll(tries(posted))
	})
})
