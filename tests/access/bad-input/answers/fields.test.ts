import { describe, expect, it } from 'vitest'
import { withField } from '../../ask/forms'
import { placeOf } from '../../ask/outcome'
import { send } from '../../ask/send'
import { aliveIn, escaped, hostile, isStored, type Kind } from '../../look/hostile'
import { open } from '../../site/here'
import { openSession } from '../../site/people'
import { mailIsOut, snapshot, snapshotAtRest } from '../../site/snapshot'
import { type Answering, again, formFor, give, look, things, told } from './give'

const fields: readonly (readonly [Answering, string, Kind])[] = [
	['approve', 'once', 'id'],
	['approve', 'revision', 'hash'],
	['approve', 'option', 'key'],
	['approve', 'place', 'key'],
	['approve', 'purchaseOrder', 'words'],
	['change', 'once', 'id'],
	['change', 'revision', 'hash'],
	['change', 'about', 'key'],
	['change', 'note', 'lines'],
	['skip', 'once', 'id'],
	['skip', 'revision', 'hash'],
	['skip', 'why', 'lines'],
]
/** A household is not asked for a purchase order: what is wrong with one that came all the same is told, and not shown. */
const seen = ['note', 'why']

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
			if (field === 'purchaseOrder') expect([page.status, /role="alert"/.test(page.body)]).toEqual([200, true])
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

describe('what the address of a design holds', () => {
	it('is looked at and nothing more', async () => {
		await again()
		const { proposal } = things()
		const before = await snapshotAtRest(open.site.folder)
		for (const { value } of hostile.filter((each) => each.what !== '10,000 signs'))
			for (const name of ['option', `at.${things().place}`, 'extra', 'without', 'told', 'for', 'form'])
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
