import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import type { Draft } from '@/lib/proposal/draft'
import type { Facts } from '@/lib/proposal/facts'
import { makeOffer } from '@/lib/proposal/make'
import { type Change, changes } from '@/lib/proposal/offer/changes'
import type { Offer } from '@/lib/proposal/offer/offer'
import { day } from '@/lib/units/day'
import { hex } from '@/lib/units/hex'
import { knownDrafts } from '../known'
import { containerId, draft, facts, first, money, offerOf, today, typed } from '../sample'

const before = offerOf()

/** What differs once the draft is changed, leaving out the totals that follow from it. */
const found = (more: Partial<Draft>, by: Partial<Facts> = {}): Change[] =>
	changes(before, offerOf({ ...draft, ...more }, { ...facts, ...by }, 3), money).filter(
		({ of }) => !of.endsWith(': total'),
	)

const option = (more: Partial<Draft['options'][number]>): Partial<Draft> => ({
	options: draft.options.map((each) => (each.key === 'a' ? { ...each, ...more } : each)),
})
const extra = (more: Partial<Draft['extras'][number]>): Partial<Draft> => ({
	extras: draft.extras.map((each) => (each.key === 'wreath' ? { ...each, ...more } : each)),
})
const pot = (n: number, lines: Draft['extras'][number]['lines']) =>
	option({
		pots: first(draft.options).pots.map((each) => (each.container === containerId(n) ? { ...each, lines } : each)),
	})
const chip = first(first(draft.options).palette)
const box = 'Copper and plum, Long box'

describe('what changed, field by field', () => {
	test.each<{ name: string; more: Partial<Draft>; by?: Partial<Facts>; is: Change[] }>([
		{
			name: 'the title',
			more: { title: 'Winter at the bakery, by lantern' },
			is: [{ of: 'Title', was: 'Winter at the bakery', is: 'Winter at the bakery, by lantern' }],
		},
		{
			name: 'a letter written anew',
			more: { letter: 'Dear Ada, shorter.' },
			is: [{ of: 'Letter', was: draft.letter, is: 'Dear Ada, shorter.' }],
		},
		{
			name: 'a paragraph of the letter, and none that stayed',
			more: { letter: 'Dear Ada,\n\nbirch and brass this year.\n\nMara' },
			is: [{ of: 'Letter', was: 'birch and copper this year.', is: 'birch and brass this year.\n\nMara' }],
		},
		{
			name: 'a paragraph that went',
			more: { letter: 'Dear Ada,' },
			is: [{ of: 'Letter', was: 'birch and copper this year.', is: null }],
		},
		{
			name: 'two paragraphs in another order, whole',
			more: { letter: 'birch and copper this year.\n\nDear Ada,' },
			is: [{ of: 'Letter', was: draft.letter, is: 'birch and copper this year.\n\nDear Ada,' }],
		},
		{
			name: 'the install',
			more: { window: { from: day('2026-11-23'), to: day('2026-12-01') } },
			is: [{ of: 'Goes in', was: '16–\u206020 November', is: '23 November – 1 December' }],
		},
		{
			name: 'the day to answer by',
			more: { answerBy: day('2026-11-02') },
			is: [{ of: 'Answer by', was: 'Friday 30 October', is: 'Monday 2 November' }],
		},
		{
			name: 'a container that may be left out now',
			more: { containers: draft.containers.map((each) => ({ ...each, mayLeaveOut: true })) },
			is: [
				{
					of: 'Left urn',
					was: 'urn, 16 in across and 20 in high',
					is: 'urn, 16 in across and 20 in high, may be left out',
				},
			],
		},
		{
			name: 'a container measured anew',
			more: {},
			by: { cards: facts.cards.map((card) => (card.id === containerId(2) ? { ...card, heightCm: 63.5 } : card)) },
			is: [
				{
					of: 'Right urn',
					was: 'round, 18 in across and 20 in high, may be left out',
					is: 'round, 18 in across and 25 in high, may be left out',
				},
			],
		},
		{
			name: 'a palette renamed, and not its pots',
			more: option({ name: 'Kiln and sloe' }),
			is: [{ of: 'Palette “Kiln and sloe”', was: 'Copper and plum', is: 'Kiln and sloe' }],
		},
		{
			name: 'a colour',
			more: option({ palette: [{ ...chip, hex: hex('#6a2f4b'), echoes: '' }] }),
			is: [
				{
					of: 'Copper and plum: colours',
					was: 'Copper and plum one #b4643a (echoes your pans)',
					is: 'Copper and plum one #6a2f4b',
				},
			],
		},
		{
			name: 'a count',
			more: pot(3, [typed(4, 'spiller', 17), typed(6, 'mechanics', 5)]),
			is: [{ of: `${box}: holly`, was: '14 stems', is: '17 stems' }],
		},
		{
			name: 'sold before, lent now',
			more: pot(2, [typed(1, 'thriller', 11), typed(3, 'accent', 3)]),
			is: [{ of: 'Copper and plum, Right urn: copper globes', was: '3 pieces, lent', is: '3 pieces' }],
		},
		{
			name: 'a material for another; what is new comes last',
			more: pot(3, [typed(2, 'spiller', 1.5), typed(6, 'mechanics', 5)]),
			is: [
				{ of: `${box}: holly`, was: '14 stems', is: null },
				{
					of: 'Cautions',
					was: expect.stringContaining('Holly is poisonous to pets.'),
					is: expect.not.stringContaining('Holly'),
				},
				{ of: `${box}: noble fir`, was: null, is: '1.5 kg' },
			],
		},
		{
			name: 'more of a material that stands in two lines',
			more: pot(3, [typed(4, 'spiller', 10), typed(4, 'spiller', 4), typed(6, 'mechanics', 5)]),
			is: [{ of: `${box}: holly`, was: '14 stems', is: '10 stems and 4 stems' }],
		},
		{
			name: 'an extra’s name, words and lines',
			more: extra({ name: 'Wreath of cones', words: '', lines: [typed(7, 'accent', 6)] }),
			is: [
				{
					of: 'Extra “Wreath of cones”',
					was: expect.stringMatching(/^Wreath · Wreath, hung by us · cone picks, 4 pieces · \$\d+\.\d\d$/),
					is: expect.stringMatching(/^Wreath of cones · cone picks, 6 pieces · \$\d+\.\d\d$/),
				},
			],
		},
		{
			name: 'an extra’s price alone',
			more: extra({ minutes: 31.5 }),
			is: [
				{
					of: 'Extra “Wreath”',
					was: expect.stringMatching(/ · \$\d+\.\d\d$/),
					is: expect.stringMatching(/ · \$\d+\.\d\d$/),
				},
			],
		},
		{
			name: 'a caution more',
			more: {},
			by: {
				cards: facts.cards.map((card) => (card.id === containerId(1) ? { ...card, limitedWeight: 'balcony' } : card)),
			},
			is: [
				{
					of: 'Cautions',
					was: expect.not.stringContaining('balcony'),
					is: expect.stringContaining('Left urn stands on a balcony'),
				},
			],
		},
	])('$name', ({ more, by = {}, is }) => {
		expect(found(more, by)).toEqual(is)
	})

	test('the total of the palette that it concerns, and of no other', () => {
		const after = offerOf({ ...draft, ...pot(1, [typed(1, 'thriller', 40)]) })
		const totals = changes(before, after, money).filter(({ of }) => of.endsWith(': total'))
		expect(totals.map(({ of }) => of)).toEqual(['Copper and plum: total'])
	})

	test('price and pots come first, the letter last', () => {
		const more = pot(3, [typed(2, 'spiller', 1.5), typed(6, 'mechanics', 5)])
		const after = offerOf({ ...draft, ...more, title: 'Winter', letter: 'Dear Ada' })
		expect(changes(before, after, money).map(({ of }) => of)).toEqual([
			'Copper and plum: total',
			`${box}: holly`,
			'Title',
			'Cautions',
			`${box}: noble fir`,
			'Letter',
		])
	})

	test('a palette, a container and an extra that came or went, whole', () => {
		const [one] = draft.options
		const less: Draft = {
			...draft,
			options: one ? [one] : [],
			extras: [first(draft.extras)],
			containers: draft.containers.slice(0, 2),
		}
		const gone = changes(before, offerOf(less), money).filter(({ is }) => is === null)
		expect(gone.map(({ of }) => of)).toEqual(
			expect.arrayContaining([
				'Long box',
				'Palette “Brass and navy”',
				'Brass and navy: colours',
				'Brass and navy, Left urn: birch',
				'Brass and navy: total',
				'Copper and plum, Long box: holly',
				'Extra “String of lights”',
			]),
		)
		const come = changes(offerOf(less), before, money).filter(({ was }) => was === null)
		expect(come.map(({ of }) => of).toSorted()).toEqual(gone.map(({ of }) => of).toSorted())
	})

	test('a new number alone is no change', () => {
		expect(changes(before, offerOf(draft, facts, 9), money)).toEqual([])
	})

	test('nor is the order in which containers, palettes or extras stand', () => {
		const turned: Draft = { ...draft, options: draft.options.toReversed(), extras: draft.extras.toReversed() }
		expect(changes(before, offerOf(turned), money)).toEqual([])
	})
})

const offers = knownDrafts.map((random): Offer => makeOffer(random, facts, money, 1, today).offer)

describe('laws of changes', () => {
	test('nothing differs from itself', () => {
		fc.assert(
			fc.property(offers, (offer) => changes(offer, structuredClone(offer), money).length === 0),
			{ numRuns: 100 },
		)
	})

	test('there and back say the same with was and is the other way round', () => {
		const sorted = (of: Change[]) => of.map(({ was, is }) => JSON.stringify([was, is])).toSorted()
		fc.assert(
			fc.property(offers, offers, (a, b) => {
				const there = changes(a, b, money)
				const back = changes(b, a, money).map(({ was, is, ...rest }) => ({ ...rest, was: is, is: was }))
				expect(sorted(there)).toEqual(sorted(back))
				for (const { was, is } of there) expect(was).not.toBe(is)
			}),
			{ numRuns: 100 },
		)
	})
})
