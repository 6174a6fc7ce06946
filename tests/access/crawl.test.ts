import { beforeAll, describe, expect, it } from 'vitest'
import { clients } from '@/demo/cast/clients'
import { doors } from '@/demo/cast/people'
import { table } from '@/lib/access/table'
import { idIn, missing, pathOf } from './ask/cells'
import { crawl } from './ask/crawl'
import { urlencoded } from './ask/forms'
import { type Answer, type Sending, send } from './ask/send'
import { open } from './site/here'
import { type ClientKey, columnOf, contacts, openSession, type PersonName, persons } from './site/people'
import { record, snapshot, snapshotAtRest } from './site/snapshot'
import { type Things, thingsOf } from './site/things'
import { type Row, rows } from './table/rows'

let bakery: Things
let dental: Things

beforeAll(() => {
	bakery = thingsOf(open.site.folder, open.site.cast, 'bakery')
	dental = thingsOf(open.site.folder, open.site.cast, 'dental')
})

const as = (person: PersonName) => (path: string, sending: Sending) => open.ask(person, path, sending)
const keys = Object.keys(clients).filter((key): key is ClientKey => key in clients)
const shown = rows.filter(({ method }) => method === 'GET')
const starts = () => [
	'/',
	...shown.flatMap((row) => [bakery, dental].map((things) => pathOf(row, idIn(row.of, things) ?? '', things))),
]

describe('looking changes nothing', () => {
	it('but that a contact who opened a proposal or an agreement has seen it, once', async () => {
		const { folder } = open.site
		const lines = () => record(folder, (db) => db.prepare('SELECT act, actor FROM event ORDER BY seq').raw().all())
		const unseen = (db: Parameters<Parameters<typeof record>[1]>[0]) =>
			db.prepare('SELECT id, state, revision_hash, answered_at, reminded_at FROM proposal ORDER BY id').raw().all()
		const [before, was, proposals] = [snapshot(folder), lines(), record(folder, unseen)]
		const once: Record<string, number> = {}
		for (const person of persons) once[person] = (await crawl(as(person), starts(), { ofEach: 3 })).length
		const [between, is] = [snapshot(folder), lines()]
		const told = is.slice(was.length)
		expect(told.length).toBeGreaterThan(0)
		for (const line of told)
			expect(line).toEqual([
				expect.stringMatching(/^(?:proposal seen|agreement opened)$/),
				expect.stringMatching(/^contact /),
			])
		const noted = { event: '', proposal: '', agreement_opening: '' }
		expect({ ...between, ...noted }).toEqual({ ...before, ...noted })
		expect(record(folder, unseen)).toEqual(proposals)
		for (const person of persons) expect((await crawl(as(person), starts(), { ofEach: 3 })).length).toBe(once[person])
		expect(snapshot(folder)).toEqual(between)
		process.stdout.write(
			`crawl: ${Object.entries(once)
				.map(([person, n]) => `${person} ${n}`)
				.join(', ')}\n`,
		)
	}, 600_000)

	it('is not noted when a page is fetched before anybody wants it', async () => {
		const { folder } = open.site
		const { proposal } = thingsOf(folder, open.site.cast, 'clapboard')
		const session = openSession(folder, open.site.cast.people.clapboardApprover.id)
		const before = await snapshotAtRest(folder)
		for (const headers of [
			{ 'sec-purpose': 'prefetch', 'sec-fetch-dest': 'document' },
			{ purpose: 'prefetch', 'sec-fetch-dest': 'document' },
			{ 'next-router-prefetch': '1', 'sec-fetch-dest': 'document' },
			{ rsc: '1' },
			{},
		])
			await send(open.site.url, `/proposal/${proposal}`, { session, headers })
		expect(snapshot(folder)).toEqual(before)
	})
})

/** What differs between two answers for no reason of ours: the nonce, the framework's key of a request, the time, and the id that was asked for. */
function plain({ status, headers, body }: Answer, id: string): string {
	const { date: _, ...rest } = headers
	const nonce = /'nonce-([^']+)'/.exec(headers['content-security-policy']?.toString() ?? '')?.[1] ?? 'none'
	const jsonNonce = JSON.stringify(nonce).slice(1, -1)
	return [status, JSON.stringify(rest), body]
		.join('\n')
		.replaceAll(nonce, 'NONCE')
		.replaceAll(jsonNonce, 'NONCE')
		.replace(/"[\w-]{21}[vm]"/g, '"KEY OF THIS REQUEST"')
		.replaceAll(id, 'ID')
}

describe('what is not yours reads as what is not there', () => {
	const named = rows.filter(
		({ of }) => of === 'client' || of === 'proposal' || of === 'answered proposal' || of === 'agreement',
	)
	const strangers = persons.filter((person) => columnOf(person, 'bakery') !== 'designer')
	/** To staff who may do it no client is foreign. */
	const worksFor = ({ act }: Row, person: PersonName) =>
		act !== null && columnOf(person, 'bakery') === 'helper' && table[act].may.some((each) => each === 'helper')
	const form = urlencoded([['words', 'none']])
	const waysOf = ({ method, route }: Row): { query: string; sending: Sending }[] =>
		method === 'POST'
			? [{ query: '', sending: { method, ...form } }]
			: [
					{ query: '', sending: {} },
					{ query: route.endsWith('/container') ? '&_rsc' : '?_rsc', sending: { headers: { rsc: '1' } } },
				]

	it.each(named)('$method $route', async (row) => {
		for (const person of strangers.filter((each) => !worksFor(row, each))) {
			const foreign = ['approver', 'payer'].includes(columnOf(person, 'dental')) ? bakery : dental
			const id = idIn(row.of, foreign) ?? ''
			for (const { query, sending } of waysOf(row)) {
				const theirs = await open.ask(person, `${pathOf(row, id, foreign)}${query}`, sending)
				const none = await open.ask(person, `${pathOf(row, missing.absent, foreign)}${query}`, sending)
				expect([person, plain(theirs, id)]).toEqual([person, plain(none, missing.absent)])
			}
		}
	})

	it('a proposal that was never published, to its own client', async () => {
		const { folder, url, cast } = open.site
		for (const [client, who] of [
			['unpriced', 'unpricedApprover'],
			['bicycles', 'bicyclesApprover'],
		] as const) {
			const id = cast.proposals[client]
			const session = openSession(folder, cast.people[who].id)
			const home = await send(url, `/home/${cast.clients[client].id}`, { session })
			expect([home.status, home.body.includes(id)]).toEqual([200, false])
			for (const page of ['', '/approve', '/change', '/skip', '/done']) {
				const draft = await send(url, `/proposal/${id}${page}`, { session })
				const none = await send(url, `/proposal/${missing.absent}${page}`, { session })
				expect(draft.status).toBe(404)
				expect(plain(draft, id)).toBe(plain(none, missing.absent))
			}
		}
	})
})

describe('a contact comes across nobody else', () => {
	const theirs = (person: keyof typeof contacts) =>
		doors.filter(([, who]) => who === contacts[person]).map(([client]) => client)

	it.each(['approver', 'looker', 'payer', 'other approver', 'two doors'] as const)('%s', async (person) => {
		const { cast } = open.site
		const others = keys.filter((key) => !theirs(person).includes(key))
		const ids = (of: Partial<Record<string, string>>) => others.flatMap((key) => of[key] ?? [])
		const strange = [
			...others.map((key) => cast.clients[key].name.replaceAll('&', '&amp;')),
			...others.map((key) => cast.clients[key].id),
			...ids(cast.proposals),
			...ids(cast.autumn),
			...doors.filter(([client]) => others.includes(client)).map(([, who]) => cast.people[who].address),
		].filter((word) => word !== cast.people[contacts[person]].address)
		const home = theirs(person).map((key) => `/home/${cast.clients[key].id}`)
		const reads = await crawl(as(person), ['/', '/home', ...home])
		const all = reads.map(({ answer }) => answer.body).join('\n')
		for (const key of theirs(person)) expect(all).toContain(cast.clients[key].id)
		expect(strange.filter((word) => all.includes(word))).toEqual([])
	})
})

const outsiders: readonly PersonName[] = ['signed out', 'token holder', 'expired', 'idle', 'ended']

describe('who has no door any more', () => {
	it.each(outsiders)('%s is nobody to the library either', async (person) => {
		const { body, status } = await open.ask(person, '/api/auth/session')
		expect([status, body]).toEqual([200, '{}'])
	})
})
