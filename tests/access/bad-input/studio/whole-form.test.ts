import { v7 } from 'uuid'
import { describe, expect, it } from 'vitest'
import { rateTicks } from '@/lib/forms/rates/rate-table'
import { formOf, pageWith } from '../../ask/bodies'
import { actionNamed } from '../../ask/build'
import { crawl } from '../../ask/crawl'
import { type Fields, json, posted, urlencoded, withField } from '../../ask/forms'
import { send } from '../../ask/send'
import { aliveIn, escaped } from '../../look/hostile'
import { open } from '../../site/here'
import { openSession } from '../../site/people'
import { mailIsOut, snapshot, snapshotAtRest } from '../../site/snapshot'
import { draftOf, thingsOf } from '../../site/things'
import { again, fill, things } from './fill'
import { forms } from './forms'

describe('a form that is not as the page made it', () => {
	const names = Object.keys(forms)
	const changed = async (form: string, change: (fields: Fields) => Fields) => {
		const before = await snapshotAtRest(open.site.folder)
		const answer = await fill(form, change)
		expect(snapshot(open.site.folder)).toEqual(before)
		return answer
	}

	it.each(names)('%s with a field more is refused', async (form) => {
		for (const name of ['priceCents', 'studio', 'constructor', 'toString', 'hasOwnProperty'])
			expect((await changed(form, (fields) => [...fields, [name, '1']])).status).toBe(303)
	})

	it.each(names)('%s without a field is refused', async (form) => {
		const optional: readonly string[] = [
			'again',
			'ask',
			'hasDrainHole',
			'isPoisonousToPets',
			'remove',
			...rateTicks.map(({ at }) => at),
		]
		for (const [name] of formOf(form, things()).filter(([each]) => !optional.includes(each)))
			expect([name, (await changed(form, (fields) => fields.filter(([each]) => each !== name))).status]).toEqual([
				name,
				303,
			])
	})

	it.each(names)('%s without its key, or with one that is none', async (form) => {
		for (const value of ['', 'none', '<script>alert(1)</script>', '0'.repeat(36)])
			expect((await changed(form, (fields) => withField(fields, 'once', value))).status).toBe(303)
	})

	it.each(names)('%s of nothing, or of fields without end', async (form) => {
		expect((await changed(form, () => [])).status).toBe(303)
		const many = Array.from({ length: 1200 }, (_, index) => [`f${index}`, 'x'] as const)
		expect((await changed(form, (fields) => [...fields, ...many])).status).toBeLessThan(500)
	})

	it.each(names)('%s sent twice changes nothing the second time', async (form) => {
		const own = things()
		// What is gone after the first time is told as not there the second.
		if (['endContact', 'dropColour', 'mergeColours'].includes(form)) return
		const sending = posted(actionNamed(form).id, formOf(form, own))
		const send = () => open.ask('designer', pageWith(form, own), { method: 'POST', ...sending })
		await again(form)
		await send()
		const before = await snapshotAtRest(open.site.folder)
		const second = await send()
		expect(second.status).toBe(303)
		expect(snapshot(open.site.folder)).toEqual(before)
	})

	const fresh = {
		saveClient: 'client',
		savePlace: 'place',
		saveContainer: 'container',
		saveMaterial: 'material',
		saveSupplier: 'supplier',
		saveRecipe: 'recipe',
	} as const
	it.each(Object.entries(fresh))('%s of something new, pressed twice at once, makes one', async (form, field) => {
		const own = things()
		const fields = withField(withField(formOf(form, own), field, ''), 'name', `Twice ${form}`)
		const sending = posted(actionNamed(form).id, fields)
		const before = (await snapshotAtRest(open.site.folder))[field]?.split(' ')[0]
		await Promise.all([1, 2, 3].map(() => open.ask('designer', pageWith(form, own), { method: 'POST', ...sending })))
		expect(Number(snapshot(open.site.folder)[field]?.split(' ')[0])).toBe(Number(before) + 1)
	})

	it('things of two clients mixed are things that are not there', async () => {
		const theirs = thingsOf(open.site.folder, open.site.cast, 'stucco')
		for (const [form, field, id] of [
			['savePlace', 'place', theirs.place],
			['addColour', 'place', theirs.place],
			['saveContainer', 'place', theirs.place],
			['saveContainer', 'container', theirs.container],
			['endContact', 'contact', theirs.contact],
		] as const)
			expect([form, field, (await changed(form, (fields) => withField(fields, field, id))).status]).toEqual([
				form,
				field,
				404,
			])
	})
})

describe('what the studio wrote, however hostile', () => {
	const picture = '"><img src=x onerror=alert(1)>'

	it('reaches its client and its helper as text: pages, parts, mail', async () => {
		const own = things()
		for (const [form, field] of [
			['saveClient', 'name'],
			['savePlace', 'name'],
			['savePlace', 'address'],
			['savePlace', 'accessNote'],
			['saveContainer', 'name'],
			['saveSettings', 'name'],
		] as const)
			expect((await fill(form, (fields) => withField(fields, field, picture))).status).toBe(303)
		const kept = draftOf(open.site.folder, own.proposal)
		const next = {
			...kept,
			title: picture,
			letter: `${picture}\n\n${picture}`,
			options: kept.options.map((option) => ({
				...option,
				palette: option.palette.map((colour) => ({ ...colour, name: picture, echoes: picture })),
			})),
			extras: kept.extras.map((extra) => ({ ...extra, words: picture })),
		}
		const saved = await open.ask('designer', `/studio/proposal/${own.proposal}/save`, {
			method: 'POST',
			...json({ version: own.version, draft: next }),
		})
		expect(saved.status).toBe(200)
		await again('steer')
		await mailIsOut(open.site.folder)
		const session = openSession(open.site.folder, open.site.cast.people.clapboardApprover.id)
		const reads = await crawl(
			(path, sending) => send(open.site.url, path, { session, ...sending }),
			['/', `/proposal/${own.proposal}?option=a`],
		)
		const answer = urlencoded([
			['once', v7()],
			['revision', things().revision],
			['option', 'a'],
			['purchaseOrder', picture],
		])
		const said = await send(open.site.url, `/proposal/${own.proposal}/answer/approve`, {
			method: 'POST',
			session,
			...answer,
		})
		expect(said.headers.location).toMatch(/\/done$/)
		await mailIsOut(open.site.folder)
		const helper = await open.ask('helper', '/studio/install')
		for (const { path, answer: page } of [...reads, { path: 'install', answer: helper }])
			if (String(page.headers['content-type']).startsWith('text/html'))
				expect([path, page.status < 500, aliveIn(page.body)]).toEqual([path, true, []])
		expect(
			[helper.body, ...reads.map(({ answer: page }) => page.body)].filter((body) => body.includes(escaped(picture)))
				.length,
		).toBeGreaterThan(3)
		const letters = open.postbox.letters.filter(({ html }) => html.includes('&lt;img src=x'))
		expect(letters.length).toBeGreaterThan(1)
		for (const { html, head } of letters) expect([aliveIn(html), head.includes('\nBcc')]).toEqual([[], false])
	})
})
