import { v7 } from 'uuid'
import { beforeAll, describe, expect, it } from 'vitest'
import { issuedTo } from '@/e2e/site/agreement'
import { addDays, dayOf, moment } from '@/lib/units/day'
import { formOf, scanned } from '../../ask/bodies'
import { actionNamed } from '../../ask/build'
import { type Fields, posted, urlencoded, withField } from '../../ask/forms'
import { placeOf } from '../../ask/outcome'
import type { Answer, Sending } from '../../ask/send'
import { aliveIn, escaped } from '../../look/hostile'
import { open } from '../../site/here'
import { record, snapshot, snapshotAtRest } from '../../site/snapshot'
import { type Things, thingsOf } from '../../site/things'

const unknown = '01999999-0000-7000-8000-00000000000a'
const turned = 'Corwin \u202enevahesroG'
let inn: Things
const agreement = () => String(inn.agreement)
const desk = () => `/studio/agreements/${agreement()}`
const inDays = (count: number) => addDays(dayOf(moment(new Date()), open.site.cast.studio.timeZone), count)

beforeAll(async () => {
	await issuedTo(open.site, 'inn')
	inn = thingsOf(open.site.folder, open.site.cast, 'inn')
})

const post = (path: string, sending: Sending) => open.ask('designer', path, { method: 'POST', ...sending })
const act = (name: 'saveTemplate' | 'endAgreement', fields: Fields, path: string) =>
	post(path, posted(actionNamed(name).id, fields))

/** Nothing is changed. */
async function vain(send: () => Promise<Answer>): Promise<Answer> {
	const before = await snapshotAtRest(open.site.folder)
	const said = await send()
	expect(snapshot(open.site.folder)).toEqual(before)
	return said
}

/** Nothing is changed; the page that it leads to says why, with nothing alive in it. */
async function told(send: () => Promise<Answer>): Promise<string> {
	const said = await vain(send)
	expect([said.status, placeOf(said)]).toEqual([303, expect.stringContaining('form=')])
	const page = await open.ask('designer', placeOf(said))
	expect([page.status, page.body.includes('role="alert"'), aliveIn(page.body)]).toEqual([200, true, []])
	return page.body
}

describe('the clauses', () => {
	const version = () =>
		record(open.site.folder, (db) =>
			String(db.prepare('SELECT coalesce(max(version), 1) FROM agreement_template').pluck().get()),
		)
	const clauses = (...changes: readonly (readonly [name: string, value: string])[]) =>
		changes.reduce<Fields>(
			(fields, [name, value]) => withField(fields, name, value),
			withField(formOf('saveTemplate', inn), 'version', version()),
		)
	const save = (fields: Fields) => act('saveTemplate', fields, '/studio/agreements/template')

	it.each([
		['a title that is empty', 'title', '', 'Give the clause a title.'],
		['a title of 81 characters', 'title', 'T'.repeat(81), 'Keep this to 80 characters.'],
		['a title of 10,000', 'title', 'T'.repeat(10_000), 'Keep this to 80 characters.'],
		['a title that turns the reading order about', 'title', turned, 'characters that cannot be stored'],
		['a title with a bell in it', 'title', 'Who\u0007', 'characters that cannot be stored'],
		['a title on two lines', 'title', 'Between\nwhom', 'Keep this on one line.'],
		['a title with a blank in it', 'title', 'For {client}', 'keep the title on one line, without blanks'],
		['a text that is empty', 'text', ' ', 'says nothing yet: write it, or turn it off.'],
		['a text of 4,001 characters', 'text', 'w'.repeat(4001), 'Keep this to 4000 characters.'],
		['a text with a blank that nothing fills', 'text', 'It costs {price}.', '{price} is no blank that can be filled'],
		['a text with a brace alone', 'text', 'It costs {client', 'a brace is open or closed alone'],
		['a place that is none', 'place', 'first', 'Give a place in the order: 1, 2, 3.'],
		['a place below the first', 'place', '-1', 'Give a place in the order: 1, 2, 3.'],
		['a place between two', 'place', '1.5', 'Give a place in the order: 1, 2, 3.'],
		['a place past all', 'place', '100', 'Give a place in the order: 1, 2, 3.'],
	])('%s is refused, in a sentence', async (_, box, value, says) => {
		const body = await told(() => save(clauses([`clause.0.${box}`, value])))
		expect(body).toContain(escaped(says))
		expect(body).toContain('Between')
	})

	it('what was typed is kept beside what is wrong', async () => {
		const typed = 'Where all of it "stands" & hangs, '.repeat(4)
		expect(await told(() => save(clauses(['clause.1.title', typed])))).toContain(escaped(typed))
	})

	it.each([
		['a key of nobody’s', [['clause.0.key', '<script>alert(1)</script>']]],
		['a box that is none', [['clause.0.price', '1']]],
		['a tick that is none', [['clause.0.on', 'yes']]],
		['a clause past all that a form holds', [['clause.61.title', 'More']]],
		['a version that is none', [['version', '-1']]],
		['no key of its own', [['once', 'none']]],
	] as const)('%s changes nothing', async (_, changes) => {
		await told(() => save(clauses(...changes)))
	})

	it('none in use, and what somebody else changed meanwhile', async () => {
		const off = clauses().filter(([name]) => !name.endsWith('.on'))
		expect(await told(() => save(off))).toContain('Turn at least one clause on.')
		expect(await told(() => save(clauses(['version', '7'])))).toContain('The clauses were changed elsewhere meanwhile.')
	})

	it('a script and a formula are words, and are shown as words; sent twice, they are kept once', async () => {
		const [script, formula] = ['<script>alert(1)</script>', '=HYPERLINK("http://e.example")']
		const fields = clauses(['clause.0.title', script], ['clause.0.text', formula])
		expect(placeOf(await save(fields))).toBe('/studio/agreements/template?saved')
		const { body } = await open.ask('designer', '/studio/agreements/template')
		expect([aliveIn(body), body.includes(escaped(script)), body.includes(escaped(formula))]).toEqual([[], true, true])
		expect(await told(() => save(fields))).toContain('The clauses were changed elsewhere meanwhile.')
		expect(await told(() => save(withField(fields, 'version', version())))).toContain('Nothing is different')
	})
})

describe('a signature on paper', () => {
	const filled = (changes: Readonly<Record<string, string>> = {}) => ({
		...{ once: v7(), agreement: agreement(), document: inn.document, signer: 'Corwin Gorsehaven' },
		...{ signedOn: inDays(0), ...changes },
	})
	const keep = (changes?: Readonly<Record<string, string>>, bytes?: Buffer, path = desk()) =>
		post(`${path}/paper`, scanned(filled(changes), bytes))

	it.each([
		['that is empty', '', 'This cannot be left empty.'],
		['of spaces', '   ', 'This cannot be left empty.'],
		['of 10,000 characters', 'C'.repeat(10_000), 'Keep this to 120 characters.'],
		['that turns the reading order about', turned, 'characters that cannot be stored'],
		['with a bell in it', 'Corwin\u0007', 'characters that cannot be stored'],
	])('by a name %s is refused, in a sentence', async (_, signer, says) => {
		expect(await told(() => keep({ signer }))).toContain(says)
	})

	it.each([
		['that is empty', () => '', 'Choose a day of the calendar.'],
		['that the calendar has not', () => '2031-02-29', 'Choose a day of the calendar.'],
		['that is still to come', () => inDays(1), 'That day is still to come.'],
		['before it was issued', () => inDays(-2), 'That day lies before the agreement was issued.'],
	])('on a day %s is refused, in a sentence', async (_, signedOn, says) => {
		expect(await told(() => keep({ signedOn: signedOn() }))).toContain(says)
	})

	it.each([
		['words', Buffer.from('a page that was signed')],
		['nothing', Buffer.alloc(0)],
		['a drawing', Buffer.from('<svg xmlns="http://www.w3.org/2000/svg" width="9" height="9"></svg>')],
	])('with %s for a picture is refused, and keeps the name', async (_, bytes) => {
		const body = await told(() => keep({ signer: '"><img src=x onerror=alert(1)>' }, bytes))
		expect(body).toContain('could not be read as a photo')
		expect(body).toContain(escaped('"><img src=x onerror=alert(1)>'))
	})

	it('of another text than stands, without its key, or with a field more', async () => {
		expect(await told(() => keep({ document: 'e'.repeat(64) }))).toContain('A newer one was issued meanwhile.')
		for (const changes of [{ document: 'none' }, { once: '' }, { priceCents: '1' }]) await told(() => keep(changes))
	})

	it('of an agreement that is not there', async () => {
		for (const path of [`/studio/agreements/${unknown}`, '/studio/agreements/none'])
			expect((await vain(() => keep({}, undefined, path))).status).toBe(404)
	})

	it('is kept once, and only then is there one', async () => {
		const form = filled()
		const send = () => post(`${desk()}/paper`, scanned(form))
		expect(placeOf(await send())).toBe(`${desk()}?told=paper`)
		const kept = () =>
			record(open.site.folder, (db) =>
				db.prepare('SELECT count(*) FROM agreement_paper WHERE document = ?').pluck().get(inn.document),
			)
		await expect.poll(kept, { timeout: 30_000 }).toBe(1)
		expect(placeOf(await vain(send))).toContain('form=')
	})
})

describe('renewing', () => {
	const priced = () => `price.${agreement()}.winter ${Number(inDays(15).slice(0, 4)) + 1}`
	const filled = (): Fields => [
		['once', v7()],
		['signBy', inDays(20)],
		['pick', agreement()],
		[priced(), '640.00'],
	]
	const send = (fields: Fields, headers = {}) =>
		post('/studio/agreements/renew/send', {
			...urlencoded(fields),
			headers: { ...urlencoded(fields).headers, ...headers },
		})
	/** Tried, and told of each why it was not issued. */
	async function outcome(fields: Fields): Promise<string> {
		const said = await vain(() => send(fields))
		expect(placeOf(said)).toMatch(/^\/studio\/agreements\/renew\?.*&done=/)
		return (await open.ask('designer', placeOf(said))).body
	}

	it.each([
		'-1',
		'0',
		'1e9',
		'NaN',
		'1,5',
		'12.505',
		'9'.repeat(20),
		'100000.01',
		'',
		'１２',
		'<script>alert(1)</script>',
	])('at a price of %j is refused, in a sentence', async (price) => {
		expect(await told(() => send(withField(filled(), priced(), price)))).toMatch(/Give (an amount|a price)/)
	})

	it('leads back to the same year with what was typed, and to no other place', async () => {
		const year = inDays(15 + 364).slice(0, 4)
		const asked = [...withField(filled(), priced(), '6 hundred'), ['ask', `year=${year}&rise=4`]] as const
		const said = await vain(() => send(asked))
		expect(placeOf(said)).toMatch(
			new RegExp(`^/studio/agreements/renew\\?year=${year}&by=percent&rise=4&step=500&form=[0-9a-f-]{36}$`),
		)
		expect((await open.ask('designer', placeOf(said))).body).toContain('value="6 hundred"')
		const away = await vain(() => send([...withField(filled(), 'once', ''), ['ask', '//elsewhere.example?x=1']]))
		expect(placeOf(away)).toMatch(/^\/studio\/agreements\/renew\?by=percent&rise=0&step=500&form=/)
	})

	it('nothing, or what is no agreement', async () => {
		expect(await told(() => send(filled().filter(([name]) => name !== 'pick')))).toContain(
			'Tick the agreements that are to be renewed.',
		)
		expect(await told(() => send(withField(filled(), 'pick', 'none')))).toContain(
			'This names nothing that is known here.',
		)
	})

	it('to be signed on no day, by another form, or without its key', async () => {
		expect(await told(() => send(withField(filled(), 'signBy', '2031-02-29')))).toContain(
			'Choose a day of the calendar.',
		)
		await told(() => send(withField(filled(), 'once', '0'.repeat(36))))
		for (const name of ['stepCents', 'constructor', 'price.none.winter 2027'])
			await told(() => send(withField(filled(), name, '1')))
	})

	it('what is not there, what nobody signed, and by a day that is over', async () => {
		const { agreement: unsigned } = thingsOf(open.site.folder, open.site.cast, 'clapboard')
		expect(await outcome(withField(filled(), 'pick', unknown))).toContain('There is no such agreement.')
		expect(await outcome(withField(filled(), 'pick', String(unsigned)))).toContain('Nobody signed it')
		expect(await outcome(withField(filled(), 'signBy', inDays(-1)))).toContain('The day to sign by is over')
	})

	it('is told as data where a page asks for data', async () => {
		const said = await vain(() => send(withField(filled(), priced(), '-1'), { accept: 'application/json' }))
		expect([said.status, JSON.parse(said.body)]).toEqual([
			422,
			{ errors: { [priced()]: 'Give an amount such as 12.50, to the cent.' } },
		])
	})

	it('is done once, however often it is sent', async () => {
		const form = filled()
		expect(placeOf(await send(form))).toContain('&done=')
		expect(await outcome(form)).toContain('It was renewed before.')
		expect(await outcome(filled())).toContain('It was renewed before.')
	})
})

describe('ending early', () => {
	const filled = (...changes: readonly (readonly [name: string, value: string])[]) =>
		changes.reduce<Fields>((fields, [name, value]) => withField(fields, name, value), formOf('endAgreement', inn))
	const end = (fields: Fields, path = desk()) => act('endAgreement', fields, path)

	it.each([
		['a last day that the calendar has not', 'on', () => '2031-02-29', 'Choose a day of the calendar.'],
		['a last day before it begins', 'on', () => inDays(3), 'That day lies before the agreement begins.'],
		['a last day past its end', 'on', () => inDays(500), 'The agreement is over by then anyway.'],
		['said on a day to come', 'saidOn', () => inDays(1), 'That day is still to come.'],
		['said on no day', 'saidOn', () => '', 'Choose a day of the calendar.'],
		['by nobody', 'by', () => 'nobody', 'Say who ends it.'],
		['for no reason', 'reason', () => '  ', 'This cannot be left empty.'],
		['for a reason of 301 characters', 'reason', () => 'r'.repeat(301), 'Keep this to 300 characters.'],
		['for one that turns the reading order about', 'reason', () => turned, 'characters that cannot be stored'],
	])('%s is refused, in a sentence', async (_, name, value, says) => {
		expect(await told(() => end(filled([name, value()])))).toContain(says)
	})

	it('a script for a reason comes back as words', async () => {
		const body = await told(() => end(filled(['reason', '<script>alert(1)</script>'], ['by', 'nobody'])))
		expect(body).toContain(escaped('<script>alert(1)</script>'))
	})

	it.each([
		['a step that is none', [['step', 'undo']]],
		['a field more', [['remainsCents', '0']]],
		['no key of its own', [['once', '']]],
	] as const)('%s changes nothing', async (_, changes) => {
		await vain(() => end(filled(...changes)))
	})

	it('to see what remains changes nothing, and what was typed comes back', async () => {
		const said = await vain(() => end(filled(['step', 'see'], ['reason', 'They "move" & go.'])))
		const { body } = await open.ask('designer', placeOf(said))
		expect(body).toContain(escaped('They "move" & go.'))
		expect(body).toContain('remains due')
	})

	it('one that is not there, or that nobody signed, is not ended', async () => {
		expect((await vain(() => end(filled(['agreement', unknown])))).status).toBe(404)
		const { agreement: unsigned } = thingsOf(open.site.folder, open.site.cast, 'clapboard')
		const said = await vain(() => end(filled(['agreement', String(unsigned)])))
		expect(placeOf(said)).toContain(`/studio/agreements/${unsigned}?form=`)
	})

	it('is done once, however often it is sent', async () => {
		const form = filled()
		expect(placeOf(await end(form))).toBe(`${desk()}?told=ended`)
		expect(placeOf(await vain(() => end(form)))).toContain('form=')
	})
})
