import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { jobInputsSchema } from '@/lib/pricing/job-schema'
import { price } from '@/lib/pricing/price'
import { everything } from '@/lib/pricing/quote/choice'
import { quote } from '@/lib/pricing/quote/quote'
import type { Draft } from '@/lib/proposal/draft'
import type { Facts } from '@/lib/proposal/facts'
import { jobOf } from '@/lib/proposal/job-of'
import { makeOffer, makeRevision } from '@/lib/proposal/make'
import { offerSchema } from '@/lib/proposal/offer/offer'
import { canonical } from '@/lib/record/canonical'
import { hashOf } from '@/lib/record/hash'
import { cents } from '@/lib/units/cents'
import { day } from '@/lib/units/day'
import { knownDrafts } from './known'
import {
	card,
	containerId,
	draft,
	facts,
	first,
	made,
	materials,
	money,
	offerOf,
	placeId,
	today,
	typed,
} from './sample'

const onePot: Draft = {
	...draft,
	containers: [{ id: containerId(3), mayLeaveOut: true, isNew: true }],
	options: [
		{
			...first(draft.options),
			pots: [{ container: containerId(3), lines: [typed(4, 'spiller', 14), typed(3, 'accent', 2.5, 'lent')] }],
		},
	],
	extras: [first(draft.extras), { ...first(draft.extras), key: 'x', place: placeId(2), name: 'Garland', words: '' }],
}

/** What is drawn. */
const look = { form: 'short needle', secondHex: null, lengthCm: 43, acrossCm: 19 }
const longBox = {
	shape: 'window box',
	topCm: 91.44,
	topDepthCm: 20.32,
	bottomCm: 86.36,
	bottomDepthCm: 17.78,
	heightCm: 22.86,
	wallCm: 1,
	headspaceCm: 5,
	soilDepthCm: null,
	madeOf: 'resin',
	colour: '#3a3d40',
	stands: 'all round',
	sillToGlassCm: null,
}

describe('a small offer', () => {
	const { offer, inputs } = made(onePot, facts, 4)
	const { prices, ...option } = first(offer.options)

	test('says what the client will see, and nothing of the places and extras that it does not concern', () => {
		expect({ ...offer, options: [option] }).toEqual({
			v: 1,
			proposal: '00000000-0000-7000-8000-00000000d001',
			number: 4,
			studio: 'Two Steps Up',
			signedBy: 'Mara',
			client: 'Ninefold Bakery',
			season: { quarter: 'winter', year: 2026 },
			title: 'Winter at the bakery',
			letter: 'Dear Ada,\n\nbirch and copper this year.',
			window: { from: '2026-11-16', to: '2026-11-20' },
			answerBy: '2026-10-30',
			places: [
				{
					id: placeId(2),
					name: 'Side door',
					address: '2 Quay Lane',
					wall: { kind: 'brick', hex: '#8f4a28' },
					door: null,
				},
			],
			containers: [
				{
					id: containerId(3),
					place: placeId(2),
					name: 'Long box',
					words: 'window box, 36 in by 8 in and 9 in high',
					mayLeaveOut: true,
					vessel: longBox,
				},
			],
			options: [
				{
					key: 'a',
					name: 'Copper and plum',
					palette: [{ name: 'Copper and plum one', hex: '#b4643a', echoes: 'echoes your pans' }],
					pots: [
						{
							container: containerId(3),
							lines: [
								{
									role: 'spiller',
									name: 'holly',
									hex: '#444444',
									unit: 'stem',
									count: 14,
									holding: 'sold',
									hazards: ['poisonous to people', 'poisonous to pets'],
									look: { ...look, pieces: 14 },
								},
								{
									role: 'accent',
									name: 'copper globes',
									hex: '#333333',
									unit: 'piece',
									count: 2.5,
									holding: 'lent',
									hazards: [],
									look: { ...look, pieces: 3 },
								},
							],
							cautions: [
								'Holly is poisonous if eaten; keep children from it.',
								'Holly is poisonous to pets.',
								'If someone has eaten of it, call your poison line at once.',
								'Greens dry out over the winter: keep them from heaters and open flames.',
							],
						},
					],
				},
			],
			extras: [
				{
					key: 'x',
					name: 'Garland',
					words: '',
					place: placeId(2),
					lines: [
						{
							role: 'accent',
							name: 'cone picks',
							hex: '#777777',
							unit: 'piece',
							count: 4,
							holding: 'sold',
							hazards: ['small parts'],
							look: { ...look, pieces: 4 },
						},
					],
					cautions: ['Cone picks has small parts; keep it from small children and pets.'],
				},
			],
			cautions: [
				'Holly is poisonous if eaten; keep children from it.',
				'Holly is poisonous to pets.',
				'Cone picks has small parts; keep it from small children and pets.',
				'If someone has eaten of it, call your poison line at once.',
				'Greens dry out over the winter: keep them from heaters and open flames.',
			],
		})
	})

	test('is priced as its job is, by the client’s side of the computation', () => {
		const job = jobOf(onePot, first(onePot.options), facts)
		expect(job && price(job, { money }).list).toEqual(prices)
		expect(prices.parts.map(({ is, name }) => [is, name])).toEqual([
			['container', 'Long box'],
			['soil', 'Long box'],
			['travel', 'Side door'],
			['design', 'Design'],
			['extra', 'Garland'],
		])
	})

	test('keeps beside it what its costing follows from, without the rates', () => {
		const job = jobOf(onePot, first(onePot.options), facts)
		const { rates: _, ...rest } = job ?? expect.fail('the draft has a container')
		expect(inputs).toEqual([{ key: 'a', job: rest }])
		expect(jobInputsSchema.parse(JSON.parse(JSON.stringify(first(inputs).job)))).toEqual(rest)
	})
})

describe('the words of a container', () => {
	const wordsOf = (more: Parameters<typeof card>[2], lengths: 'in' | 'cm') => {
		const by = { ...facts, studio: { ...facts.studio, lengths }, cards: [card(1, 'One', more)] }
		return first(offerOf(draft, by).containers).words
	}
	test.each([
		{ more: {}, lengths: 'in', says: 'round, 18 in across and 20 in high' },
		{ more: { shape: 'bowl', topCm: 33, heightCm: 21 }, lengths: 'cm', says: 'bowl, 33 cm across and 21 cm high' },
		{
			more: { shape: 'trough', topCm: 120, topDepthCm: 32.5, heightCm: 40 },
			lengths: 'cm',
			says: 'trough, 120 cm by 32.5 cm and 40 cm high',
		},
		{ more: { shape: 'square', topCm: 60.96 }, lengths: 'in', says: 'square, 24 in by 24 in and 20 in high' },
	] as const)('$says', ({ more, lengths, says }) => {
		expect(wordsOf(more, lengths)).toBe(says)
	})
})

describe('an offer', () => {
	test('keeps the order of palettes, containers and extras as the draft has them', () => {
		const turned: Draft = {
			...draft,
			options: draft.options.toReversed(),
			containers: draft.containers.toReversed(),
			extras: draft.extras.toReversed(),
		}
		const offer = offerOf(turned)
		expect(offer.options.map(({ key }) => key)).toEqual(['b', 'a'])
		expect(offer.containers.map(({ name }) => name)).toEqual(['Long box', 'Right urn', 'Left urn'])
		expect(first(offer.options).pots.map(({ container }) => container)).toEqual([3, 2, 1].map(containerId))
		expect(offer.extras.map(({ key }) => key)).toEqual(['lights', 'wreath'])
		expect(made(turned).inputs.map(({ key }) => key)).toEqual(['b', 'a'])
	})

	test('warns of what it holds, and of nothing in a pot or an extra that it no longer has', () => {
		const without: Draft = {
			...draft,
			containers: draft.containers.filter(({ id }) => id !== containerId(3)),
			extras: [{ ...first(draft.extras), place: placeId(2) }],
		}
		expect(offerOf(without).cautions).toEqual([
			'Greens dry out over the winter: keep them from heaters and open flames.',
		])
		expect(offerOf().cautions).toContain('Holly is poisonous to pets.')
	})

	test('lets the preview open dates fall on today', () => {
		const open: Draft = { ...draft, window: { from: null, to: null }, answerBy: null }
		expect(offerOf(open)).toMatchObject({ window: { from: today, to: today }, answerBy: today })
		const half: Draft = { ...draft, window: { from: day('2026-11-16'), to: null } }
		expect(offerOf(half).window).toEqual({ from: '2026-11-16', to: '2026-11-16' })
	})

	test('of a container that the fixed price pays for, whatever the draft says, lets it not be left out', () => {
		const fixed: Draft = { ...draft, agreement: { is: 'fixed', cents: cents(95_000), containers: [containerId(2)] } }
		expect(offerOf(fixed).containers.map(({ mayLeaveOut }) => mayLeaveOut)).toEqual([false, false, true])
		expect(offerOf().containers.map(({ mayLeaveOut }) => mayLeaveOut)).toEqual([false, true, true])
	})

	test('takes a supplement only beside a fixed price', () => {
		const supplement = { ...first(draft.options), supplementCents: cents(7501) }
		const names = (agreement: Draft['agreement']) =>
			first(offerOf({ ...draft, options: [supplement], agreement }).options).prices.parts.map(({ is }) => is)
		expect(names({ is: 'fixed', cents: cents(95_000), containers: [containerId(1)] })).toContain('supplement')
		expect(names({ is: 'discount', percent: 10 })).not.toContain('supplement')
		expect(names({ is: 'none' })).not.toContain('supplement')
	})

	test('counts a certificate while it holds on the last day of the install', () => {
		const exempt = (expires: string, window = draft.window): string | null => {
			const customer = { ...facts.customer, exempt: { certificate: 'EX-4410', expires: day(expires) } }
			return first(offerOf({ ...draft, window }, { ...facts, customer }).options).prices.payer.exemptCertificate
		}
		expect(exempt('2026-11-20')).toBe('EX-4410')
		expect(exempt('2026-11-19')).toBeNull()
		expect(exempt('2027-11-19', { from: null, to: null })).toBeNull()
	})

	test('leaves a line out of the price, and in the picture, while it cannot be priced', () => {
		const lent: Draft = {
			...onePot,
			options: [
				{ ...first(onePot.options), pots: [{ container: containerId(3), lines: [typed(1, 'thriller', 9, 'lent')] }] },
			],
		}
		const { offer, inputs } = made(lent)
		expect(first(first(offer.options).pots).lines).toMatchObject([{ name: 'birch', count: 9 }])
		expect(first(first(inputs).job.containers).lines).toEqual([])
		expect(makeRevision(lent, facts, money, 1, today).ok).toBe(false)
	})
})

/** Every key, however deep. */
function keysIn(value: unknown): string[] {
	if (Array.isArray(value)) return value.flatMap(keysIn)
	if (value === null || typeof value !== 'object') return []
	return Object.entries(value).flatMap(([key, inner]) => [key, ...keysIn(inner)])
}

const secret = /cost|margin|supplier|markup|wage|pack|loss|burden|minutes|gross|billed/i

/** Facts whose studio figures can be told from any other figure. */
const told: Facts = {
	...facts,
	rates: {
		...facts.rates,
		wageCentsPerHour: { owner: 2_617_001, helper: 1_811_003 },
		disposal: { priceCents: 641, costCents: 2_571_007 },
		markup: { ...facts.rates.markup, fresh: 2.273 },
	},
}
const studioFigures =
	/\b(1841|2933|5417|1567|2459|991|1373|18\.41|29\.33|54\.17|15\.67|24\.59|9\.91|13\.73|2617001|1811003|2571007|2\.273)\b/

describe('nothing of the studio’s reaches the client', () => {
	test('no key of an offer speaks of it, and no pack price, wage, cost or markup is in it', () => {
		for (const of of [offerOf(draft, told), offerOf(onePot, told)]) {
			expect(keysIn(of).filter((key) => secret.test(key))).toEqual([])
			expect(JSON.stringify(of)).not.toMatch(studioFigures)
		}
	})

	test('the inputs beside it do, so that the look-out sees something', () => {
		const { inputs } = made(draft, told)
		expect(keysIn(inputs).some((key) => secret.test(key))).toBe(true)
		for (const { pack } of materials) expect(JSON.stringify(inputs)).toContain(`"cents":${pack?.cents}`)
		expect(JSON.stringify(inputs)).toMatch(studioFigures)
	})

	test('whatever the draft', () => {
		fc.assert(
			fc.property(knownDrafts, (random) => {
				const { offer } = makeOffer(random, told, money, 1, today)
				expect(keysIn(offer).filter((key) => secret.test(key))).toEqual([])
			}),
			{ numRuns: 150 },
		)
	})

	test.each([
		{ name: 'a cost', at: { costCents: 1 } },
		{ name: 'a margin', at: { marginPercent: 52 } },
		{ name: 'a note of the studio', at: { studioNote: 'x' } },
	])('an offer with $name in it is none, wherever it stands', ({ at }) => {
		const offer = offerOf()
		const option = first(offer.options)
		const part = first(option.prices.parts)
		const carrying = [
			{ ...offer, ...at },
			{ ...offer, places: [{ ...first(offer.places), ...at }] },
			{ ...offer, containers: [{ ...first(offer.containers), ...at }] },
			{ ...offer, extras: [{ ...first(offer.extras), ...at }] },
			{ ...offer, options: [{ ...option, ...at }] },
			{ ...offer, options: [{ ...option, pots: [{ ...first(option.pots), ...at }] }] },
			{ ...offer, options: [{ ...option, prices: { ...option.prices, ...at } }] },
			{ ...offer, options: [{ ...option, prices: { ...option.prices, parts: [{ ...part, ...at }] } }] },
		]
		for (const of of carrying) expect(offerSchema.safeParse(of).success).toBe(false)
		expect(offerSchema.safeParse(offer).success).toBe(true)
	})

	test('a cost book or a costing is no price list', () => {
		const offer = offerOf()
		const job = jobOf(draft, first(draft.options), facts) ?? expect.fail('the draft has containers')
		const { costs } = price(job, { money })
		expect(offerSchema.safeParse({ ...offer, options: [{ ...first(offer.options), prices: costs }] }).success).toBe(
			false,
		)
	})
})

describe('an offer as it is kept', () => {
	test('reads back the same, with the same hash and the same quotes', () => {
		fc.assert(
			fc.property(knownDrafts, fc.integer({ min: 1, max: 40 }), (random, number) => {
				const { offer } = makeOffer(random, facts, money, number, today)
				const back = offerSchema.parse(JSON.parse(canonical(offer)))
				expect(back).toEqual(offer)
				expect(hashOf(back)).toBe(hashOf(offer))
				for (const [n, { prices }] of offer.options.entries())
					expect(quote(back.options[n]?.prices ?? prices, everything)).toEqual(quote(prices, everything))
			}),
			{ numRuns: 150 },
		)
	})

	test('another number or another word is another hash', () => {
		const hashes = [offerOf(), offerOf(draft, facts, 3), offerOf({ ...draft, title: 'Winter at the bakery.' })].map(
			hashOf,
		)
		expect(new Set(hashes).size).toBe(3)
	})
})
