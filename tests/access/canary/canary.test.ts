import { beforeAll, describe, expect, it } from 'vitest'
import { canaryPrefix } from '@/demo/cast/canary'
import { doors, type PersonKey, people } from '@/demo/cast/people'
import { bodyFor, formOf, pageWith } from '../ask/bodies'
import { actionNamed } from '../ask/build'
import { crawl } from '../ask/crawl'
import { called, urlencoded } from '../ask/forms'
import { secretsIn } from '../look/costs'
import { open } from '../site/here'
import { record } from '../site/snapshot'
import { draftOf, thingsOf } from '../site/things'
import { actionRows, rows } from '../table/rows'
import { choicesOf, filled, pathsOf, shownToNobodyElse } from './addresses'
import { as, post } from './as'
import { isBuilt, isClean, readable, secrets, whole } from './clean'
import { theSeasonGoesOn } from './season'

beforeAll(theSeasonGoesOn, 120_000)

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
			if (!isBuilt(path, answer)) isClean(`${key}, ${how} ${path}`, await readable(answer))
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
			// What the studio notes of a visit is for whoever makes it.
			isClean(`${how} ${path}`, whole(answer).replaceAll(/CANARY-visit-note-\w+/g, ''))
			const text =
				how === 'page' && !path.startsWith('/photo/')
					? answer.body.replace(/<script[^>]*>.*?<\/script>|<!--.*?-->/gs, '')
					: ''
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
