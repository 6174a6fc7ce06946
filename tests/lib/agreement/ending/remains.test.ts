import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { remainsAt } from '@/lib/agreement/ending/remains'
import type { Happened } from '@/lib/agreement/instalment/due-day'
import { instalmentsOf } from '@/lib/agreement/instalment/instalments'
import type { Plan } from '@/lib/agreement/instalment/plan'
import { fixedCents } from '@/lib/agreement/season'
import { cents } from '@/lib/units/cents'
import { addDays, day } from '@/lib/units/day'
import { issued } from '../document/issued'
import { anyPlan, anySeasons, terms } from '../sample'

// 249.13, 249.13, 249.13 and 249.12, on the first of December, March, June and September.
const document = issued()
const nothing: Happened = { approvedOn: null, madeOn: () => null }
const at = (on: string, paid: number) => remainsAt(document, nothing, { on: day(on), paidCents: cents(paid) })

describe('four instalments', () => {
	test.each([
		{ name: 'the day before the second', on: '2027-02-28', paid: 24_913, due: 24_913, left: 0, back: 0, away: 74_738 },
		{
			name: 'on the day of the second',
			on: '2027-03-01',
			paid: 24_913,
			due: 49_826,
			left: 24_913,
			back: 0,
			away: 49_825,
		},
		{ name: 'half of the second paid', on: '2027-04-10', paid: 40_000, due: 49_826, left: 9826, back: 0, away: 49_825 },
		{ name: 'paid ahead for all', on: '2027-04-10', paid: 99_651, due: 49_826, left: 0, back: 49_825, away: 49_825 },
		{ name: 'after the last', on: '2027-11-01', paid: 0, due: 99_651, left: 99_651, back: 0, away: 0 },
		{ name: 'before the first', on: '2026-11-30', paid: 100, due: 0, left: 0, back: 100, away: 99_651 },
	])('$name', ({ on, paid, due, left, back, away }) => {
		expect(at(on, paid)).toMatchObject({
			...{ dueCents: due, paidCents: paid, remainsCents: left, backCents: back, fallsAwayCents: away },
		})
	})
})

test('with visits: what was made is due, what was not falls away', () => {
	const perVisit = issued({ ...terms, plan: { is: 'per visit' } })
	const happened: Happened = {
		approvedOn: day('2026-11-10'),
		madeOn: ({ season, visit }) => (season.quarter === 'winter' && visit === 'install' ? day('2026-12-03') : null),
	}
	const ended = (on: string) => remainsAt(perVisit, happened, { on: day(on), paidCents: cents(0) })
	expect(ended('2026-12-02')).toMatchObject({ dueCount: 0, remainsCents: 0, fallsAwayCents: 99_651 })
	expect(ended('2026-12-03')).toMatchObject({ dueCount: 1, remainsCents: 30_625, fallsAwayCents: 69_026 })
})

test('from the approval: never due where nobody has signed', () => {
	const plan: Plan = { is: 'every months', months: 1, count: 3, start: { is: 'on approval' } }
	const fromSigning = issued({ ...terms, plan })
	const ended = (approvedOn: Happened['approvedOn']) =>
		remainsAt(fromSigning, { ...nothing, approvedOn }, { on: day('2027-02-28'), paidCents: cents(0) }).dueCount
	expect([null, day('2027-01-31'), day('2027-02-28'), day('2027-03-01')].map(ended)).toEqual([0, 2, 1, 0])
})

describe('whatever the plan, the day and what was paid', () => {
	const holds = (law: (at: (days: number) => ReturnType<typeof remainsAt>, total: number) => void) =>
		fc.assert(
			fc.property(anySeasons, anyPlan, fc.nat(20_000_000), fc.boolean(), (seasons, plan, paid, hasSigned) => {
				const totalCents = fixedCents(seasons)
				const of = { instalments: instalmentsOf(seasons, plan), totalCents }
				const from = day('2026-12-01')
				const happened: Happened = {
					approvedOn: hasSigned ? from : null,
					madeOn: ({ number }) => (number % 2 === 0 ? addDays(from, 40 * number) : null),
				}
				law((days) => remainsAt(of, happened, { on: addDays(from, days), paidCents: cents(paid) }), totalCents)
			}),
		)
	const later = [-400, -1, 0, 40, 90, 365, 4000]

	test('due and falling away are the whole; what remains and what goes back is the rest, one of them nothing', () => {
		holds((when, total) => {
			for (const days of later) {
				const { dueCents, paidCents, remainsCents, backCents, fallsAwayCents } = when(days)
				expect(dueCents + fallsAwayCents).toBe(total)
				expect(remainsCents - backCents).toBe(dueCents - paidCents)
				expect(Math.min(remainsCents, backCents)).toBe(0)
			}
		})
	})

	test('a later day never leaves less due', () => {
		holds((when) => {
			const due = later.map((days) => when(days).dueCents)
			expect(due).toEqual(due.toSorted((a, b) => a - b))
		})
	})
})
