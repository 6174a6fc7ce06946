import { describe, expect, test } from 'vitest'
import { eraseClient } from '@/db/clients/erase'
import { previewOffer, priceDraft } from '@/db/proposals/desk/price-draft'
import { readDesk } from '@/db/proposals/desk/read-desk'
import { readOffer } from '@/db/proposals/read-offer'
import { everything } from '@/lib/pricing/quote/choice'
import { quote } from '@/lib/pricing/quote/quote'
import { addDays } from '@/lib/units/day'
import { id } from '@/lib/units/id'
import { found, studio, today, utc } from '../stage/studio'
import { stepsOf } from './steps'

const of = studio()
const { draft, idOf, page, publish } = stepsOf(of)
const absent = id<'proposal'>('01999999-0000-7000-8000-00000000000a')

describe('what stands behind the client’s door', () => {
	test.each(['bakeryApprover', 'bakeryViewer', 'designer', 'system'] as const)('%s reads the same', async (who) => {
		expect(await readOffer(await of.as(who), idOf('bakery'), of.stamp())).toEqual(await page('bakery'))
	})

	test.each(['helper', 'dentalApprover', 'twoDoors', 'nobody'] as const)('to %s it is not there', async (who) => {
		const viewer = await of.as(who)
		expect(await readOffer(viewer, idOf('bakery'), of.stamp())).toBeUndefined()
		expect(await readOffer(viewer, absent, of.stamp())).toBeUndefined()
	})

	test('a draft is not there for anybody', async () => {
		for (const who of ['bookshopApprover', 'designer'] as const)
			expect(await readOffer(await of.as(who), idOf('bookshop'), of.stamp())).toBeUndefined()
	})

	test('a second revision stands with the one before it, a third with the second', async () => {
		const { before, offer } = await page('approved')
		expect([before?.number, offer?.number]).toEqual([1, 2])
		await publish('vet')
		await publish('vet')
		expect((await page('vet')).before?.number).toBe(2)
	})

	// To be answered by 9 October; midnight in New York is four o'clock in UTC.
	test.each([
		['2026-10-10T03:59', 'waiting for an answer', '2026-10-09'],
		['2026-10-10T04:00', 'lapsed', '2026-10-10'],
	])('at %s UTC the bakery’s is %s: in the town it is the %s', async (at, is, day) => {
		const { state, today: inTown } = await page('bakery', utc(at))
		expect([state.is, inTown]).toEqual([is, day])
	})

	test('once the words are erased, the hash and the day stay and the offer is gone', async () => {
		const before = await page('stucco')
		await eraseClient(await of.as('designer'), of.cast().clients.stucco.id, of.stamp())
		const state = { is: 'withdrawn', revision: before.hash }
		expect(await page('stucco')).toEqual({ ...before, state, offer: undefined })
	})

	test('carries no cost, no margin, no supplier and no note of the studio', async () => {
		const designer = await of.as('designer')
		const { proposals, autumn } = of.cast()
		const pages = await Promise.all(
			[...Object.values(proposals), ...Object.values(autumn)].map((each) => readOffer(designer, each, of.stamp())),
		)
		const text = JSON.stringify(pages)
		expect(text).not.toMatch(/cost|margin|supplier|markup|wage|studioNote|"pack"|rates"/i)
		expect(text).not.toContain('ovens are loud')
	})
})

describe('what lies on the designer’s desk', () => {
	test('beside the draft: where it stands, what was answered, and no cost', async () => {
		const desk = found(await readDesk(await of.as('designer'), idOf('inn'), of.stamp()))
		expect(desk).toMatchObject({
			client: { id: of.cast().clients.inn.id, name: 'The Three Hawsers Inn' },
			season: { id: of.cast().seasons.winter, quarter: 'winter', year: 2026 },
			state: { is: 'change asked for' },
			today,
			number: 1,
			answer: { kind: 'change asked for' },
			places: [{ name: 'Front and terrace' }],
		})
		expect(desk.containers.map(({ name }) => name)).toEqual([
			'Left urn at the steps',
			'Right urn at the steps',
			'Terrace trough',
		])
		expect(desk.colours.map(({ name }) => name)).toEqual(['roof', 'moss on the stone', 'iron lanterns'])
		expect(desk.materials).toHaveLength(Object.keys(of.cast().materials).length)
		expect(JSON.stringify(desk)).not.toMatch(/cost|margin|priceCents/i)
	})

	test('its preview is the offer that publishing freezes', async () => {
		const { draft: written } = await draft('bicycles')
		const preview = await previewOffer(
			await of.as('designer'),
			{ proposal: idOf('bicycles'), draft: written },
			of.stamp(),
		)
		await publish('bicycles')
		expect(preview).toEqual((await page('bicycles')).offer)
	})

	test('its price is the one that the client will be asked for', async () => {
		const { draft: written } = await draft('bicycles')
		const priced = await priceDraft(await of.as('designer'), { proposal: idOf('bicycles'), draft: written }, of.stamp())
		await publish('bicycles')
		const asked = quote(found((await page('bicycles')).offer?.options[0]).prices, everything)
		expect(JSON.stringify(priced?.options[0])).toContain(String(asked.totalCents / 100))
		expect(priced?.problems).toEqual([])
	})

	test('a draft that could not be published is priced all the same, and says what stops it', async () => {
		const anyPot = expect.stringMatching(/^options\.c\.pots\.[0-9a-f-]{36}$/)
		const { draft: written } = await draft('unpriced')
		const late = { ...written, answerBy: addDays(today, -1) }
		const priced = await priceDraft(await of.as('designer'), { proposal: idOf('unpriced'), draft: late }, of.stamp())
		expect(priced?.options).toHaveLength(3)
		expect(priced?.problems.map(({ at }) => at)).toEqual(['answerBy', anyPot, anyPot])
	})

	test.each(['helper', 'bicyclesApprover', 'bakeryApprover', 'nobody', 'system'] as const)(
		'not for %s',
		async (who) => {
			const [viewer, { draft: written }] = [await of.as(who), await draft('bicycles')]
			const what = { proposal: idOf('bicycles'), draft: written }
			expect(await readDesk(viewer, idOf('bicycles'), of.stamp())).toBeUndefined()
			expect(await priceDraft(viewer, what, of.stamp())).toBeUndefined()
			expect(await previewOffer(viewer, what, of.stamp())).toBeUndefined()
		},
	)
})
