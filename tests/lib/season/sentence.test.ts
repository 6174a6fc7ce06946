import { describe, expect, test } from 'vitest'
import { moneyFormat } from '@/lib/format/money'
import { kept } from '@/lib/proposal/state'
import { type StateTotal, seasonSentence } from '@/lib/season/sentence'
import { cents } from '@/lib/units/cents'
import { day } from '@/lib/units/day'

const money = moneyFormat('USD')

const total = (
	state: StateTotal['state'],
	count: number,
	value: number,
	by: string | null = null,
	isLeast = false,
): StateTotal => ({
	state,
	count,
	valueCents: cents(value),
	firstAnswerBy: by === null ? null : day(by),
	isLeast,
})

const waiting = 'waiting for an answer'

describe('how a season stands', () => {
	test.each<{ name: string; totals: StateTotal[]; says: string }>([
		{ name: 'not begun', totals: [], says: 'Nobody has a proposal for this season yet.' },
		{
			name: 'rows of nothing are nothing',
			totals: [total('drafting', 0, 0), total(waiting, 0, 0, '2026-10-09')],
			says: 'Nobody has a proposal for this season yet.',
		},
		{
			name: 'in full swing',
			totals: [
				total(waiting, 4, 310_050, '2026-10-09'),
				total('change asked for', 1, 61_700),
				total('drafting', 2, 0),
				total('approved', 5, 402_075),
				total('installed', 1, 77_725),
				total('skipped', 1, 33_000),
			],
			says: 'Four of 14 still owe an answer, the first by Friday 9 October. Three wait for you. $4,798.00 is approved, $3,100.50 is out, before tax.',
		},
		{
			name: 'palettes to choose from, of which the cheapest is counted',
			totals: [total(waiting, 2, 310_050, '2026-10-09', true), total('approved', 1, 402_075)],
			says: 'Two of three still owe an answer, the first by Friday 9 October. $4,020.75 is approved, at least $3,100.50 is out, before tax.',
		},
		{
			name: 'one of twelve',
			totals: [total(waiting, 1, 28_500, '2026-10-31'), total('approved', 11, 999_900)],
			says: 'One of twelve still owes an answer, the first by Saturday 31 October. $9,999.00 is approved, $285.00 is out, before tax.',
		},
		{
			name: 'one waits for the studio',
			totals: [total('drafting', 1, 0)],
			says: 'None of one owes an answer. One waits for you. $0.00 is approved, $0.00 is out, before tax.',
		},
		{
			name: 'all settled',
			totals: [total('lapsed', 1, 10_100), total('withdrawn', 1, 20_200), total('cancelled', 1, 30_300)],
			says: 'None of three owes an answer. $0.00 is approved, $0.00 is out, before tax.',
		},
		{
			name: 'many',
			totals: [total(waiting, 23, 512_300, '2026-11-02'), total('change asked for', 15, 4400)],
			says: '23 of 38 still owe an answer, the first by Monday 2 November. 15 wait for you. $0.00 is approved, $5,123.00 is out, before tax.',
		},
		{
			name: 'no day is known',
			totals: [total(waiting, 2, 70_700)],
			says: 'Two of two still owe an answer. $0.00 is approved, $707.00 is out, before tax.',
		},
	])('$name', ({ totals, says }) => {
		expect(seasonSentence(totals, money)).toBe(says)
	})

	test('counts everyone, in whatever state', () => {
		const all = [...kept, 'lapsed' as const].map((state, n) => total(state, n + 2, 0))
		expect(seasonSentence(all, money)).toContain('of 54 still owe')
	})
})
