import { beforeAll, describe, expect, it } from 'vitest'
import { agreementForms } from '../../ask/agreement-forms'
import { type Fields, urlencoded, withField } from '../../ask/forms'
import { placeOf } from '../../ask/outcome'
import { send } from '../../ask/send'
import { open } from '../../site/here'
import { openSession } from '../../site/people'
import { record, snapshot, snapshotAtRest } from '../../site/snapshot'
import { type Things, thingsOf } from '../../site/things'

type Form = keyof typeof agreementForms
let session: string
let things: Things

beforeAll(() => {
	const { folder, cast } = open.site
	things = thingsOf(folder, cast, 'clapboard')
	session = openSession(folder, cast.people.clapboardApprover.id)
	record(folder, (db) => db.exec("UPDATE session SET proven_by = 'link'"))
})

const look = (path: string) => send(open.site.url, path, { session })
const give = (form: Form, fields: Fields) =>
	send(open.site.url, `/agreement/${things.agreement}/answer/${form}`, {
		method: 'POST',
		session,
		...urlencoded(fields),
	})

/** Nothing is changed; the page that it leads to says why. */
async function told(form: Form, fields: Fields): Promise<string> {
	const before = await snapshotAtRest(open.site.folder)
	const said = await give(form, fields)
	expect(snapshot(open.site.folder)).toEqual(before)
	expect(said.status).toBe(303)
	const page = await look(placeOf(said))
	expect([page.status, /role="alert"/.test(page.body)]).toEqual([200, true])
	return page.body
}

const filled = (form: Form, name?: string, value = '') => {
	const fields = agreementForms[form](things)
	return name === undefined ? fields : withField(fields, name, value)
}

describe('before it was agreed to', () => {
	it('signing leads to the step that comes first', async () => {
		expect(await told('sign', filled('sign'))).toContain('One step comes before signing')
	})

	it('a box that is not ticked is asked for', async () => {
		const unticked = filled('consent').filter(([name]) => name !== 'agrees')
		expect(await told('consent', unticked)).toContain('Tick the box if you agree')
	})

	it('other words than were shown are shown anew', async () => {
		expect(await told('consent', filled('consent', 'words', 'e'.repeat(64)))).toContain('have changed since you read')
	})

	it('one who opened nothing is led to open it', async () => {
		const { folder, cast, url } = open.site
		const hew = openSession(folder, cast.people.twoDoors.id)
		const { agreement, document, words } = thingsOf(folder, cast, 'vet')
		record(folder, (db) => db.exec('DROP TRIGGER agreement_opening_no_delete; DELETE FROM agreement_opening'))
		const body = urlencoded(agreementForms.consent({ ...things, document, words }))
		const said = await send(url, `/agreement/${agreement}/answer/consent`, { method: 'POST', session: hew, ...body })
		expect(said.headers.location).toBe(`/agreement/${agreement}?told=not+opened`)
		const page = await send(url, `/agreement/${agreement}/consent`, { session: hew })
		expect([page.status, page.headers.location]).toEqual([307, `/agreement/${agreement}?told=not+opened`])
		await send(url, `/agreement/${things.agreement}`, { session, headers: { 'sec-fetch-dest': 'document' } })
	})
})

describe('once it was agreed to', () => {
	beforeAll(async () => {
		expect(placeOf(await give('consent', filled('consent')))).toBe(`/agreement/${things.agreement}/sign`)
	})

	const names = [
		['empty', '', 'This cannot be left empty.'],
		['of spaces', '   ', 'This cannot be left empty.'],
		['of 10,000 characters', 'M'.repeat(10_000), 'Keep this to 120 characters.'],
		['that turns the reading order about', 'Nell \u202eyrdnevaT', 'characters that cannot be stored'],
		['with a bell in it', 'Nell\u0007Tavendry', 'characters that cannot be stored'],
		['on two lines', 'Nell\nTavendry', 'Keep this on one line.'],
	] as const
	it.each(names)('a name %s is refused, in a sentence', async (_, name, says) => {
		expect(await told('sign', filled('sign', 'name', name))).toContain(says)
	})

	it('a name that is refused is kept as it was typed', async () => {
		const name = 'Nell Tavendry of the Long Row, '.repeat(5)
		expect(await told('sign', filled('sign', 'name', name))).toContain(`value="${name}"`)
	})

	it.each([
		['out of the field', '1200.34'],
		['that is none', '<svg>'],
		['of too many points', Array.from({ length: 4200 }, () => '1.2').join('-')],
	])('a drawing %s is refused, in a sentence', async (_, stroke) => {
		expect(await told('sign', filled('sign', 'stroke', stroke))).toContain('The drawing is more than we can keep')
	})

	it('a drawing of 2 MB is turned away at the door', async () => {
		const before = await snapshotAtRest(open.site.folder)
		const said = await give('sign', filled('sign', 'stroke', '1'.repeat(2_000_000)))
		expect(said.status).toBe(413)
		expect(said.body).toContain('more than a form can hold')
		expect(snapshot(open.site.folder)).toEqual(before)
	})

	it('a hash of another text is refused', async () => {
		expect(await told('sign', filled('sign', 'document', 'e'.repeat(64)))).toContain(
			'was changed while you were reading',
		)
	})

	it('another client’s agreement is not there', async () => {
		const { folder, cast, url } = open.site
		const { agreement, document } = thingsOf(folder, cast, 'dental')
		for (const form of ['consent', 'sign', 'decline'] as const) {
			const body = urlencoded(agreementForms[form]({ ...things, document }))
			const said = await send(url, `/agreement/${agreement}/answer/${form}`, { method: 'POST', session, ...body })
			expect(said.status).toBe(404)
		}
	})

	it('no reason is no declining', async () => {
		expect(await told('decline', filled('decline', 'reason', ' '))).toContain('This cannot be left empty.')
	})

	it('a session of more than a day ago is asked for a fresh proof', async () => {
		const { folder, cast, url } = open.site
		const old = openSession(folder, cast.people.clapboardApprover.id, { age: 25 * 3_600_000 })
		record(folder, (db) => db.exec("UPDATE session SET proven_by = 'code' WHERE proven_by IS NULL"))
		const before = await snapshotAtRest(folder)
		const path = `/agreement/${things.agreement}`
		const said = await send(url, `${path}/answer/sign`, { method: 'POST', session: old, ...urlencoded(filled('sign')) })
		expect(said.headers.location).toBe(`${path}/sign?told=proof+is+old`)
		const { body } = await send(url, `${path}/sign`, { session: old })
		expect(body).toContain('is this your mailbox')
		expect(body).toContain(`value="${path}/sign"`)
		expect(body).not.toContain('name="name"')
		expect(snapshot(folder)).toEqual(before)
	})

	it('the right form signs once: the file is kept, and the same form again changes nothing', async () => {
		const form = filled('sign')
		expect(placeOf(await give('sign', form))).toBe(`/agreement/${things.agreement}/done`)
		const { body } = await look(`/agreement/${things.agreement}/done`)
		expect(body).toContain('Signed. Thank you.')
		expect(body).toContain(things.document)
		const kept = () =>
			record(open.site.folder, (db) =>
				db.prepare('SELECT count(*) FROM agreement_paper WHERE document = ?').pluck().get(things.document),
			)
		await expect.poll(kept, { timeout: 30_000 }).toBe(1)
		expect(await told('sign', form)).toContain('It had been signed a moment before')
		const [first, second] = [
			await look(`/agreement/${things.agreement}/pdf`),
			await look(`/agreement/${things.agreement}/pdf`),
		]
		expect([first.status, first.headers['content-type']]).toEqual([200, 'application/pdf'])
		expect(second.body).toBe(first.body)
	})
})
