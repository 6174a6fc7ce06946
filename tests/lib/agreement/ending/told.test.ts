import { describe, expect, test } from 'vitest'
import { type Ending, endingRefusal, endingSchema, noticeMissing } from '@/lib/agreement/ending/ending'
import { remainsAt } from '@/lib/agreement/ending/remains'
import { endingInWords } from '@/lib/agreement/ending/told'
import { cents } from '@/lib/units/cents'
import { day } from '@/lib/units/day'
import { issued } from '../document/issued'
import { terms } from '../sample'

const document = issued()
const ending: Ending = { on: day('2027-04-10'), saidOn: day('2027-03-11'), by: 'client', reason: 'We close the shop' }
const told = (more: Partial<Ending>, paid: number, of = document) => {
	const its = { ...ending, ...more }
	const nothing = { approvedOn: null, madeOn: () => null }
	return endingInWords(its, of, remainsAt(of, nothing, { on: its.on, paidCents: cents(paid) }), 30)
}
const clause = expect.stringMatching(/^The agreement says: “You or we may end .*remain due; later ones fall away/)

describe('in words', () => {
	test('something remains due', () => {
		expect(told({}, 24_913)).toEqual([
			'Marrowby Bakery ends the agreement on 10 April 2027: “We close the shop”.',
			'Until then $498.26 before tax falls due in 2 instalments; $249.13 was paid, so $249.13 remains due.',
			'$498.25 falls away.',
			clause,
		])
	})

	test('all was paid ahead, and the studio ends it too soon', () => {
		expect(told({ by: 'studio', saidOn: day('2027-04-01'), on: day('2027-02-01') }, 99_651)).toEqual([
			'Thornapple Studio ends the agreement on 1 February 2027: “We close the shop”.',
			'That is 89 days sooner than the 30 days of notice that were agreed.',
			'Until then $249.13 before tax falls due in 1 instalment; $996.51 was paid, so $747.38 is paid back.',
			'$747.38 falls away.',
			clause,
		])
	})

	test('nothing remains, nothing falls away', () => {
		expect(told({ on: day('2027-11-01') }, 99_651)).toEqual([
			'Marrowby Bakery ends the agreement on 1 November 2027: “We close the shop”.',
			'Until then $996.51 before tax falls due in 4 instalments; $996.51 was paid, so nothing remains due.',
			clause,
		])
	})

	test('an agreement without that clause says nothing of it', () => {
		expect(told({}, 0, issued({ ...terms, without: ['ending'] })).at(-1)).toMatch(/falls away/)
	})
})

test('the notice, to the day', () => {
	expect([30, 31, 0].map((notice) => noticeMissing(ending, notice))).toEqual([0, 1, 0])
})

test.each([
	{ name: 'a day within', on: '2027-04-10', why: null },
	{ name: 'its first day', on: '2026-12-01', why: null },
	{ name: 'the day before it', on: '2026-11-30', why: 'before it begins' },
	{ name: 'its last day', on: '2027-11-30', why: 'over by then' },
	{ name: 'said tomorrow', on: '2027-04-10', saidOn: '2027-03-13', why: 'said in days to come' },
])('$name', ({ on, saidOn = '2027-03-12', why }) => {
	expect(endingRefusal({ on: day(on), saidOn: day(saidOn) }, document, day('2027-03-12'))).toBe(why)
})

test.each([
	['no reason', { reason: ' ' }],
	['a long one', { reason: 'a'.repeat(301) }],
	['nobody', { by: 'neighbour' }],
	['30 February', { on: '2027-02-30' }],
])('no ending: %s', (_, more) => {
	expect(endingSchema.safeParse({ ...ending, ...more }).success).toBe(false)
	expect(endingSchema.parse(ending)).toEqual(ending)
})
