import { expect, test } from 'vitest'
import { dueDay } from '@/lib/agreement/instalment/due-day'
import { planInWords } from '@/lib/agreement/instalment/words'
import { day } from '@/lib/units/day'
import { quarterly, spring, winter } from '../sample'

const nothing = { approvedOn: null, madeOn: () => null }
const happened = {
	approvedOn: day('2027-01-31'),
	madeOn: ({ season, visit }: { season: { year: number }; visit: string }) =>
		season.year === 2026 && visit === 'install' ? day('2026-12-03') : null,
}
const at = (season: typeof winter, visit: 'install' | 'watering') =>
	({ is: 'at visit', season, visit, number: 1 }) as const

test('a day is a day, whatever has happened', () => {
	const due = { is: 'on', day: day('2027-05-31') } as const
	expect([dueDay(due, nothing), dueDay(due, happened)]).toEqual(['2027-05-31', '2027-05-31'])
})

test('from the approval, month-end safe, and not before it', () => {
	const after = (monthsLater: number) => ({ is: 'on approval', monthsLater }) as const
	expect(dueDay(after(0), nothing)).toBeNull()
	expect([0, 1, 2].map((months) => dueDay(after(months), happened))).toEqual(['2027-01-31', '2027-02-28', '2027-03-31'])
})

test('with a visit, on the day on which it was made', () => {
	expect(dueDay(at(winter, 'install'), nothing)).toBeNull()
	expect(dueDay(at(winter, 'install'), happened)).toBe('2026-12-03')
	expect(dueDay(at(winter, 'watering'), happened)).toBeNull()
	expect(dueDay(at(spring, 'install'), happened)).toBeNull()
})

test('a plan in a few words', () => {
	expect(
		[
			null,
			quarterly,
			{ ...quarterly, months: 1, count: 12 } as const,
			{ ...quarterly, months: 2 } as const,
			{ ...quarterly, count: 1 } as const,
			{ is: 'per visit' } as const,
		].map(planInWords),
	).toEqual([
		'each season apart',
		'in 4 instalments, quarterly',
		'in 12 instalments, monthly',
		'in 4 instalments, every 2 months',
		'in one payment',
		'an instalment with each visit',
	])
})
