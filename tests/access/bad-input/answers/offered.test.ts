import { v7 } from 'uuid'
import { describe, expect, it } from 'vitest'
import { type Fields, multipart, urlencoded, withField } from '../../ask/forms'
import { placeOf } from '../../ask/outcome'
import { aliveIn } from '../../look/hostile'
import { open } from '../../site/here'
import { count, record } from '../../site/snapshot'
import { thingsOf } from '../../site/things'
import { type Answering, act, again, draft, formFor, give, look, things, told } from './give'

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

	it('a place that is another’s, or nobody’s, a palette of nobody’s at a place, a place twice', async () => {
		const own = things().place
		for (const [entries, why] of [
			[[`${other().place} a`], 'that place is not in the design'],
			[[`${v7()} b`], 'that place is not in the design'],
			[[`${own} z`], 'that palette is not offered'],
			[[`${own} constructor`], 'that palette is not offered'],
			[[`${own} a`, `${own} b`], 'form'],
			[[own], 'form'],
			[['Front door b'], 'form'],
			[Array.from({ length: 61 }, () => `${v7()} a`), 'form'],
		] as const)
			expect([
				entries[0],
				await toldWhy('approve', (form) => [...form, ...entries.map((each) => ['place', each] as const)]),
			]).toEqual([entries[0], why])
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
			const before = count(open.site.folder, 'answer')
			const same = formFor(answer)
			const places = (
				await Promise.all(
					Array.from({ length: 8 }, (_, index) => give(answer, index % 2 === 0 ? same : formFor(answer), urlencoded)),
				)
			).map(placeOf)
			expect(places.filter((place) => place.endsWith('/done')).length).toBe(1)
			expect(places.filter((place) => place.includes('told=')).length).toBe(7)
			expect(count(open.site.folder, 'answer')).toBe(before + 1)
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
