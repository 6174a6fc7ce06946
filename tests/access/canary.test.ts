import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { canaryPrefix } from '@/demo/cast/canary'
import { doors, type PersonKey, people } from '@/demo/cast/people'
import { bodyFor, formOf, pageWith } from './ask/bodies'
import { actionNamed } from './ask/build'
import { crawl } from './ask/crawl'
import { type Body, called, urlencoded } from './ask/forms'
import { type Answer, type Sending, send } from './ask/send'
import { type Secrets, secretsIn, secretsOf } from './look/costs'
import { actionRows, type Row, rows } from './rows'
import { type OpenSite, openSite } from './site/open'
import { openSession } from './site/people'
import { mailIsOut, record } from './site/snapshot'
import { draftOf, thingsOf } from './site/things'

const built = join(import.meta.dirname, '..', '..', '.next')
let open: OpenSite
let secrets: Secrets
let bytes = 0

beforeAll(async () => {
	open = await openSite()
	secrets = secretsOf(open.site.folder)
	await theSeasonGoesOn()
}, 120_000)

afterAll(async () => {
	process.stdout.write(
		`canary: ${secrets.cents.size} costs, ${secrets.margins.size} margins and every sentinel looked for in ${Math.round(bytes / 1e6)} MB\n`,
	)
	await open.close()
})

type Key = PersonKey | 'designer' | 'helper'
const as = (key: Key) => {
	const session = openSession(open.site.folder, open.site.cast.people[key].id)
	return (path: string, sending: Sending = {}) => send(open.site.url, path, { session, ...sending })
}
const post = (body: Body | ReturnType<typeof called>): Sending => ({ method: 'POST', ...body })

/** Publish, remind, approve, ask for a change, skip: one of each, so that every kind of mail goes out. */
async function theSeasonGoesOn(): Promise<void> {
	const { folder, cast } = open.site
	const designer = as('designer')
	const of = (key: 'bakery' | 'dental' | 'vet' | 'stucco' | 'clapboard') => thingsOf(folder, cast, key)
	const act = async (name: string, things: ReturnType<typeof of>) => {
		const said = await designer(pageWith(name, things), post(called(actionNamed(name).id, formOf(name, things))))
		expect(said.headers['x-action-redirect']).toBeDefined()
	}
	for (const key of ['bakery', 'clapboard'] as const) await act('publish', of(key))
	for (const key of ['bakery', 'dental', 'clapboard'] as const) await act('remind', of(key))
	const answer = async (who: PersonKey, key: Parameters<typeof of>[0], kind: string) => {
		const row = { route: `/proposal/[proposal]/answer/${kind}` }
		const said = await as(who)(`/proposal/${of(key).proposal}/answer/${kind}`, post(bodyFor(row, of(key), null)))
		expect(said.headers.location).toMatch(/\/done$/)
	}
	await answer('bakeryApprover', 'bakery', 'approve')
	await answer('vetApprover', 'vet', 'change')
	await answer('stuccoApprover', 'stucco', 'skip')
	await mailIsOut(folder)
}

/** A file of the build holds nothing of the record: the same bytes lie in the folder that was built. */
function isBuilt(path: string, answer: Answer): boolean {
	const file = /^\/_next(\/static\/[^?]+)$/.exec(path)?.[1]
	return file !== undefined && Buffer.from(answer.body).equals(Buffer.from(readFileSync(join(built, file), 'utf8')))
}

/** Nothing in it that only the studio may read; its bytes counted. */
function isClean(what: string, text: string): void {
	bytes += Buffer.byteLength(text)
	const sentinels = text.match(/CANARY[-\w]*/gi) ?? []
	expect([what, sentinels, secretsIn(text, secrets)]).toEqual([what, [], []])
}

const whole = ({ status, headers, body }: Answer) => `${status}\n${JSON.stringify(headers)}\n${body}`

const pathsOf = (client: string, proposals: readonly string[]) => [
	`/home/${client}`,
	...proposals.flatMap((id) => ['', '/approve', '/change', '/skip', '/done'].map((page) => `/proposal/${id}${page}`)),
]

/** Every address of theirs with each palette picked, each extra added and each container left out. */
function choicesOf(client: string): string[] {
	const sql =
		'SELECT p.id, s.body FROM proposal p JOIN revision r ON r.hash = p.revision_hash JOIN sealed_text s ON s.hash = r.offer_hash WHERE p.client_id = ?'
	const found = record(open.site.folder, (db) => db.prepare<[string], { id: string; body: string }>(sql).all(client))
	return found.flatMap(({ id, body }) => {
		const { options, extras, containers } = JSON.parse(body)
		const named = (name: string, of: readonly { key?: string; id?: string }[]) =>
			of.map(({ key, id: own }) => `${name}=${key ?? own}`)
		const [all, added, out] = [named('option', options), named('extra', extras), named('without', containers)]
		return [...all, `${all[0]}&${added.join('&')}`, ...out.map((each) => `${all[0]}&${each}`)].flatMap((query) => [
			`/proposal/${id}?${query}`,
			`/proposal/${id}/approve?${query}`,
		])
	})
}

const contacts = Object.keys(people).filter((key): key is PersonKey => key in people)

describe('what only the studio may read', () => {
	it('is looked for with costs enough', () => {
		expect(secrets.cents.size).toBeGreaterThan(150)
		expect(secrets.margins.size).toBeGreaterThan(10)
	})

	it.each(contacts)('reaches %s in no page, no part, no file and no header', async (key) => {
		const { cast, folder } = open.site
		const clients = doors.filter(([, who]) => who === key).map(([client]) => cast.clients[client].id)
		const ids = record(folder, (db) =>
			clients.flatMap((id) =>
				db.prepare<[string], string>('SELECT id FROM proposal WHERE client_id = ?').pluck().all(id),
			),
		)
		const starts = [
			'/',
			'/home',
			'/studio',
			'/api/auth/session',
			...clients.flatMap((id) => [...pathsOf(id, ids), ...choicesOf(id)]),
		]
		const reads = await crawl(as(key), starts, { files: key === 'bakeryApprover' })
		expect(reads.filter(({ answer }) => answer.status === 200).length).toBeGreaterThan(1)
		for (const { path, how, answer } of reads)
			if (!isBuilt(path, answer)) isClean(`${key}, ${how} ${path}`, whole(answer))
	})

	it('reaches the helper nowhere, and no price at all', async () => {
		const reads = await crawl(as('helper'), [
			'/',
			'/studio',
			'/studio/install',
			'/api/auth/session',
			...shownToNobodyElse(),
		])
		for (const { path, how, answer } of reads) {
			isClean(`${how} ${path}`, whole(answer))
			const text = how === 'page' ? answer.body.replace(/<script[^>]*>.*?<\/script>|<!--.*?-->/gs, '') : ''
			expect([path, text.includes('$')]).toEqual([path, false])
			expect([path, answer.body.match(/[$€£]\s?\d[\d,]*\.\d\d/g)]).toEqual([path, null])
		}
	})

	it('reaches nobody who is signed out', async () => {
		const reads = await crawl((path, sending) => open.ask('signed out', path, sending), ['/', ...shownToNobodyElse()])
		for (const { path, how, answer } of reads) isClean(`${how} ${path}`, whole(answer))
	})

	it.each(['helper', 'bakeryApprover', 'bakeryViewer'] as const)('reaches the %s in no refusal', async (key) => {
		const things = thingsOf(open.site.folder, open.site.cast, 'dental')
		const draft = draftOf(open.site.folder, things.proposal)
		for (const row of rows.filter(({ method }) => method === 'POST'))
			isClean(row.route, whole(await as(key)(filled(row, things.proposal), post(bodyFor(row, things, draft)))))
		for (const { name } of actionRows)
			isClean(
				name,
				whole(await as(key)(pageWith(name, things), post(called(actionNamed(name).id, formOf(name, things))))),
			)
		for (const form of ['', 'x'.repeat(50)])
			isClean(
				'a form that is none',
				whole(await as(key)(`/proposal/${things.proposal}/answer/approve`, post(urlencoded([['option', form]])))),
			)
	})

	const kinds = [/^Your design for winter \S+$/, /revised$/, /^We still need your answer/, /^Approved/]
	it('reaches nobody but the designer by mail', () => {
		const theirs = open.postbox.letters.filter(({ to }) => !to.includes(open.site.cast.people.designer.address))
		expect(theirs.length).toBeGreaterThan(15)
		for (const kind of kinds) expect(theirs.some(({ subject }) => kind.test(subject))).toBe(true)
		for (const { to, subject, head, text, html, raw } of theirs)
			for (const part of [head, text, html, raw]) isClean(`mail to ${to.join()}: ${subject}`, part)
	})
})

const filled = ({ route, path }: Row, id: string) => path ?? route.replace(/\[[^\]]+\]/, id)

function shownToNobodyElse(): string[] {
	const { proposal } = thingsOf(open.site.folder, open.site.cast, 'bakery')
	return rows.filter(({ method }) => method === 'GET').map((row) => filled(row, proposal))
}

describe('the search finds', () => {
	it('costs, margins and packs on the designer’s desk', async () => {
		const { folder, cast } = open.site
		const found = new Set<string>()
		for (const key of ['dental', 'inn', 'creditUnion', 'fieldstone'] as const) {
			const { proposal } = thingsOf(folder, cast, key)
			const desk = await as('designer')(
				`/studio/proposal/${proposal}/price`,
				post(bodyFor({ route: '/price' }, thingsOf(folder, cast, key), draftOf(folder, proposal))),
			)
			expect(desk.body).toContain('"margin"')
			for (const each of secretsIn(desk.body, secrets)) found.add(each)
		}
		expect(found.size).toBeGreaterThan(40)
		expect([...found].filter((each) => secrets.margins.has(each)).length).toBeGreaterThan(2)
	})

	it('suppliers among the materials, the note on a client’s card', async () => {
		const materials = await as('designer')('/studio/materials')
		expect(materials.body).toContain(`${canaryPrefix}supplier-`)
		expect(secretsIn(materials.body, secrets).length).toBeGreaterThan(5)
		const { client } = thingsOf(open.site.folder, open.site.cast, 'bakery')
		expect((await as('designer')(`/studio/clients/${client}`)).body).toContain(`${canaryPrefix}studio-note-bakery`)
	})

	it('every way of writing an amount', () => {
		const [cents = 0] = [...secrets.cents].filter((each) => each >= 100_000)
		const [whole, part] = [String(cents).slice(0, -2), String(cents).slice(-2)]
		const parted = `${whole.slice(0, -3)},${whole.slice(-3)}.${part}`
		for (const text of [
			`$${whole}.${part}`,
			`a ${whole},${part} b`,
			parted,
			`"cents":${cents},`,
			`${cents}`,
			`${whole}.${part}kg`,
		])
			expect([text, secretsIn(text, secrets).length]).toEqual([text, 1])
		expect(secretsIn(`#${cents} x${cents} ${cents}7 1${cents}`, secrets)).toEqual([])
	})
})
