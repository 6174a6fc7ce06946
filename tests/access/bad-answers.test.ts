import { v7 } from 'uuid'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { formOf, pageWith } from './ask/bodies'
import { actionNamed } from './ask/build'
import { called, type Fields, multipart, urlencoded } from './ask/forms'
import { type Answer, send } from './ask/send'
import { aliveIn, escaped, hostile, isStored, type Kind } from './look/hostile'
import { type OpenSite, openSite } from './site/open'
import { openSession } from './site/people'
import { mailIsOut, record, snapshot } from './site/snapshot'
import { draftOf, type Things, thingsOf } from './site/things'

let open: OpenSite
let session: string
let tries = 0

beforeAll(async () => {
	open = await openSite()
	session = openSession(open.site.folder, open.site.cast.people.clapboardApprover.id)
})

afterAll(async () => {
	process.stdout.write(`bad input in answers: ${tries} tried\n`)
	await open.close()
})

/** A household with three palettes, extras and a container that may be left out. */
const things = (): Things => thingsOf(open.site.folder, open.site.cast, 'clapboard')
const draft = () => draftOf(open.site.folder, things().proposal)

type Answering = 'approve' | 'change' | 'skip'

function formFor(answer: Answering): Fields {
	const head = [
		['once', v7()],
		['revision', things().revision],
	] as const
	if (answer === 'approve') return [...head, ['option', 'a'], ['purchaseOrder', 'PO 4471']]
	if (answer === 'skip') return [...head, ['why', 'We are away.']]
	return [...head, ['about', 'whole'], ['note', 'A little taller.'], ['about', 'option a'], ['note', '']]
}

function give(answer: Answering, fields: Fields, how = multipart): Promise<Answer> {
	tries += 1
	return send(open.site.url, `/proposal/${things().proposal}/answer/${answer}`, {
		method: 'POST',
		session,
		...how(fields),
	})
}

const look = (path: string) => send(open.site.url, path, { session })
const placeOf = ({ headers }: Answer) => String(headers.location ?? '')

async function act(name: string, step?: string): Promise<void> {
	const fields = formOf(name, things()).map(
		([field, value]) => [field, step !== undefined && field === 'step' ? step : value] as const,
	)
	await open.ask('designer', pageWith(name, things()), { method: 'POST', ...called(actionNamed(name).id, fields) })
}

/** Puts the proposal before the client once more, whatever was answered. */
async function again(): Promise<void> {
	const state = record(open.site.folder, (db) =>
		db.prepare('SELECT state FROM proposal WHERE id = ?').pluck().get(things().proposal),
	)
	if (state === 'waiting for an answer') return
	if (state === 'approved') await act('steer', 'reopen')
	await act('publish')
	await mailIsOut(open.site.folder)
}

/** Nothing is changed by what is answered; what it is told comes back. */
async function told(answer: Answering, fields: Fields, how = multipart): Promise<Answer> {
	await mailIsOut(open.site.folder)
	const before = snapshot(open.site.folder)
	const said = await give(answer, fields, how)
	expect(snapshot(open.site.folder)).toEqual(before)
	return said
}

const withField = (fields: Fields, name: string, value: string | Buffer): Fields =>
	fields.map((each) => (each[0] === name ? [name, value] : each))

const fields: readonly (readonly [Answering, string, Kind])[] = [
	['approve', 'once', 'id'],
	['approve', 'revision', 'hash'],
	['approve', 'option', 'key'],
	['approve', 'purchaseOrder', 'words'],
	['change', 'once', 'id'],
	['change', 'revision', 'hash'],
	['change', 'about', 'key'],
	['change', 'note', 'lines'],
	['skip', 'once', 'id'],
	['skip', 'revision', 'hash'],
	['skip', 'why', 'lines'],
]
const seen = ['purchaseOrder', 'note', 'why']

describe.each(fields)('%s, %s', (answer, field, kind) => {
	it.each(hostile.filter((value) => !isStored(kind, value)))(
		'refuses $what, says so and keeps what was typed',
		async ({ value }) => {
			await again()
			const said = await told(answer, withField(formFor(answer), field, value))
			expect(said.status).toBe(303)
			const place = placeOf(said)
			const page = await look(place)
			expect(place).toMatch(/[?&](?:form|told)=/)
			expect(aliveIn(page.body)).toEqual([])
			if (!seen.includes(field)) return
			expect([page.status, /role="alert"/.test(page.body)]).toEqual([200, true])
			const typed = value.toString()
			if (!/[\u0000-\u001f]/.test(typed)) expect(page.body).toContain(escaped(typed))
		},
	)

	const words = hostile.filter((value) => isStored(kind, value))
	it.each(words)('takes $what for words and shows it so, to both and by mail', async ({ value }) => {
		await again()
		const before = open.postbox.letters.length
		const said = await give(answer, withField(formFor(answer), field, value))
		expect(placeOf(said)).toMatch(/\/done$/)
		await mailIsOut(open.site.folder)
		const { proposal } = things()
		for (const page of [
			await look(`/proposal/${proposal}`),
			await look(`/proposal/${proposal}/done`),
			await look(`/home/${things().client}`),
		])
			expect([page.status, aliveIn(page.body)]).toEqual([200, []])
		for (const path of [`/studio/proposal/${proposal}`, `/studio/season/${things().season}`]) {
			const page = await open.ask('designer', path)
			expect([path, page.status, aliveIn(page.body)]).toEqual([path, 200, []])
		}
		const letters = open.postbox.letters.slice(before)
		expect(letters.length).toBeGreaterThan(0)
		for (const { head, html, to } of letters) {
			expect(aliveIn(html)).toEqual([])
			expect(head).not.toMatch(/^Bcc:/im)
			expect(to.every((address) => !address.includes('elsewhere'))).toBe(true)
		}
	})
})

describe('an answer that names what was not offered', () => {
	const other = () => thingsOf(open.site.folder, open.site.cast, 'bakery')
	const toldWhy = async (answer: Answering, change: (form: Fields) => Fields, how = multipart) => {
		await again()
		const said = await told(answer, change(formFor(answer)), how)
		expect(said.status).toBe(303)
		const { searchParams } = new URL(placeOf(said), open.site.url)
		const page = await look(placeOf(said))
		expect([page.status, /role="alert"/.test(page.body)]).toEqual([200, true])
		return searchParams.get('told') ?? 'form'
	}

	it('a palette of nobody’s', async () => {
		for (const key of ['z', 'A', 'constructor', 'length', ' a'])
			expect([key, await toldWhy('approve', (form) => withField(form, 'option', key))]).toEqual([
				key,
				'that palette is not offered',
			])
	})

	it('an extra that is not offered', async () => {
		for (const key of ['gold', 'a', '__proto__', things().container])
			expect([key, await toldWhy('approve', (form) => [...form, ['extra', key]])]).toEqual([
				key,
				'that extra is not offered',
			])
	})

	it('a container that may not be left out, or that is another’s, or nobody’s', async () => {
		const fixed = draft()
			.containers.filter(({ mayLeaveOut }) => !mayLeaveOut)
			.map(({ id }) => id)
		expect(fixed.length).toBeGreaterThan(0)
		for (const id of [...fixed, other().container, v7()])
			expect(await toldWhy('approve', (form) => [...form, ['without', id]])).toBe('that container may not be left out')
	})

	it('a part that is not in the design', async () => {
		for (const part of ['option z', 'extra none', `container ${other().container}`, 'whole design', ''])
			expect([part, await toldWhy('change', (form) => withField(form, 'about', part))]).toEqual([
				part,
				'that part is not in the design',
			])
	})

	it('another version: altered, another proposal’s, the one before', async () => {
		await again()
		const first = things().revision
		const flipped = `${first.slice(0, -1)}${first.endsWith('0') ? '1' : '0'}`
		for (const answer of ['approve', 'change', 'skip'] as const) {
			for (const hash of [flipped, other().revision, '0'.repeat(64)])
				expect(await toldWhy(answer, (form) => withField(form, 'revision', hash))).toBe('a newer revision stands')
			expect(placeOf(await told(answer, withField(formFor(answer), 'revision', first.toUpperCase())))).toContain(
				'form=',
			)
		}
		await act('publish')
		expect(things().revision).not.toBe(first)
		for (const answer of ['approve', 'change', 'skip'] as const)
			expect(await toldWhy(answer, (form) => withField(form, 'revision', first))).toBe('a newer revision stands')
	})

	it('a price, a client, a state of its own', async () => {
		for (const name of ['totalCents', 'price', 'client', 'state', 'by', 'word', 'constructor', '$ACTION_ID_x']) {
			await again()
			const said = await (name.startsWith('$') ? give : told)('approve', [...formFor('approve'), [name, '1']])
			expect([name, placeOf(said).includes('form=')]).toEqual([name, !name.startsWith('$')])
		}
		await again()
	})

	it('more extras, containers and notes than there can be', async () => {
		await again()
		const many = (name: string, count: number): Fields => Array.from({ length: count }, () => [name, 'a'] as const)
		for (const form of [
			[...formFor('approve'), ...many('extra', 61)],
			[...formFor('approve'), ...many('without', 61)],
		])
			expect(placeOf(await told('approve', form))).toContain('form=')
		for (const form of [
			[...formFor('change'), ...many('about', 86)],
			[...formFor('change'), ...many('note', 86)],
		])
			expect(placeOf(await told('change', form))).toContain('form=')
		expect(placeOf(await told('change', withField(formFor('change'), 'note', '  \n ')))).toContain('form=')
	})

	it('the same extra twice is one extra, at its price once', async () => {
		await again()
		const [extra] = draft().extras
		const key = extra?.key ?? ''
		expect(placeOf(await give('approve', [...formFor('approve'), ['extra', key], ['extra', key]]))).toMatch(/\/done$/)
		const kept = record(open.site.folder, (db) =>
			db.prepare('SELECT extras FROM answer ORDER BY rowid DESC LIMIT 1').pluck().get(),
		)
		expect(kept).toBe(JSON.stringify([key]))
	})

	it('a file where words belong', async () => {
		await again()
		const edge = 'x7d1f'
		const parts = formFor('skip')
			.slice(0, 2)
			.map(([name, value]) => `--${edge}\r\nContent-Disposition: form-data; name="${name}"\r\n\r\n${value}\r\n`)
		const file = `--${edge}\r\nContent-Disposition: form-data; name="why"; filename="why.html"\r\nContent-Type: text/html\r\n\r\n<script>alert(1)</script>\r\n--${edge}--\r\n`
		const body = () => ({
			body: `${parts.join('')}${file}`,
			headers: { 'content-type': `multipart/form-data; boundary=${edge}` },
		})
		const said = await give('skip', [], body)
		expect(placeOf(said)).toMatch(/\/done$/)
		const page = await open.ask('designer', `/studio/proposal/${things().proposal}`)
		expect([page.status, aliveIn(page.body), page.body.includes('why.html')]).toEqual([200, [], false])
	})

	it('a form cut short, without its parts, or none at all', async () => {
		await again()
		const { body, headers } = multipart(formFor('approve'))
		for (const cut of [body.slice(0, body.length - 9), body.slice(0, 60), 'nothing', ''])
			for (const answer of ['approve', 'change', 'skip'] as const) {
				const said = await told(answer, [], () => ({ body: cut, headers }))
				expect([400, 303]).toContain(said.status)
				if (said.status === 303) expect(placeOf(said)).toContain('form=')
			}
		expect(
			placeOf(
				await told('approve', [], () => ({
					body: 'a=%ff&%zz&&=&',
					headers: { 'content-type': 'application/x-www-form-urlencoded' },
				})),
			),
		).toContain('form=')
	})
})

describe('an answer that comes twice', () => {
	it.each(['approve', 'change', 'skip'] as const)(
		'%s: one of eight at the same moment is taken, the others are told',
		async (answer) => {
			await again()
			const count = () =>
				record(open.site.folder, (db) => Number(db.prepare('SELECT count(*) FROM answer').pluck().get()))
			const before = count()
			const same = formFor(answer)
			const places = (
				await Promise.all(
					Array.from({ length: 8 }, (_, index) => give(answer, index % 2 === 0 ? same : formFor(answer), urlencoded)),
				)
			).map(placeOf)
			expect(places.filter((place) => place.endsWith('/done')).length).toBe(1)
			expect(places.filter((place) => place.includes('told=')).length).toBe(7)
			expect(count()).toBe(before + 1)
			await told(answer, same, urlencoded)
		},
	)

	it('the form of before, its version put up to date, is known again', async () => {
		await again()
		const form = formFor('change')
		await give('change', form)
		await again()
		const said = await told('change', withField(form, 'revision', things().revision))
		expect(new URL(placeOf(said), open.site.url).searchParams.get('told')).toBe('sent before')
	})
})

describe('what the address of a design holds', () => {
	it('is looked at and nothing more', async () => {
		await again()
		const { proposal } = things()
		const before = snapshot(open.site.folder)
		for (const { value } of hostile.filter((each) => each.what !== '10,000 signs'))
			for (const name of ['option', 'extra', 'without', 'told', 'for', 'form'])
				for (const page of ['', '/approve', '/change', '/skip']) {
					const query = new URLSearchParams([
						[name, value.toString()],
						[name, value.toString()],
					])
					const said = await look(`/proposal/${proposal}${page}?${query}`)
					expect([name, page, said.status < 400, aliveIn(said.body)]).toEqual([name, page, true, []])
				}
		expect(snapshot(open.site.folder)).toEqual(before)
	})

	it('shows nobody what another typed', async () => {
		await again()
		const secret = 'for my eyes 7d1f0a52'
		const said = await told('skip', [...withField(formFor('skip'), 'why', secret), ['more', '1']])
		const key = new URL(placeOf(said), open.site.url).searchParams.get('form') ?? ''
		expect((await look(placeOf(said))).body).toContain(secret)
		const others = [open.site.cast.people.clapboardViewer.id, open.site.cast.people.bakeryApprover.id].map((id) =>
			openSession(open.site.folder, id),
		)
		for (const other of [...others, undefined])
			for (const path of [placeOf(said), `/proposal/${open.site.cast.proposals.bakery}/skip?form=${key}`])
				expect((await send(open.site.url, path, { session: other })).body).not.toContain(secret)
		expect((await open.ask('designer', `/studio/settings?form=${key}`)).body).not.toContain(secret)
	})
})
