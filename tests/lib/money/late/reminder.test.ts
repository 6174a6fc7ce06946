import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { notToRemind, reminderDays, reminderDue } from '@/lib/money/late/reminder'
import { notRemindedInWords } from '@/lib/money/words/late'
import { cents } from '@/lib/units/cents'
import { addDays, type Day, day, daysBetween } from '@/lib/units/day'

const dueOn = day('2026-10-20')
const owed = (remindedOn: string | null, open = 310) => ({
	...{ dueOn, openCents: cents(open) },
	remindedOn: remindedOn === null ? null : day(remindedOn),
})

describe('a reminder by itself', () => {
	test.each([
		['on its day', '2026-10-20', null, null],
		['six days late: none yet', '2026-10-26', null, null],
		['a week late', '2026-10-27', null, 7],
		['the next day, when it could not go', '2026-10-28', null, 7],
		['not again on that day', '2026-10-27', '2026-10-27', null],
		['nor weeks after', '2026-11-19', '2026-10-27', null],
		['31 days late', '2026-11-20', '2026-10-27', 31],
		['31 days late, reminded by hand the day before', '2026-11-20', '2026-11-19', null],
		['and the next day, two days after that', '2026-11-21', '2026-11-19', 31],
		['by hand on the day: needless', '2026-11-22', '2026-11-20', null],
		['after weeks of downtime the latest alone', '2027-01-10', null, 61],
		['91 days late', '2027-01-19', '2027-01-10', 91],
		['then never by itself again', '2028-05-01', '2027-01-19', null],
	] as const)('%s', (_, today, remindedOn, step) => {
		expect(reminderDue(owed(remindedOn), day(today))).toBe(step)
	})

	test('none for what is paid', () => {
		expect(reminderDue(owed(null, 0), day('2026-12-01'))).toBeNull()
	})

	test('over any days on which one looks: each once, in turn, never two within two days', () => {
		fc.assert(
			fc.property(fc.array(fc.integer({ min: 1, max: 40 }), { maxLength: 40 }), (gaps) => {
				let today = dueOn
				let remindedOn: Day | null = null
				const sent: number[] = []
				// A last look two days on: what had to wait for the quiet after another goes then.
				for (const gap of [...gaps, 2]) {
					today = addDays(today, gap)
					const step = reminderDue({ dueOn, openCents: cents(1), remindedOn }, today)
					if (step === null) continue
					if (remindedOn !== null) expect(daysBetween(remindedOn, today)).toBeGreaterThanOrEqual(2)
					expect(daysBetween(dueOn, today)).toBeGreaterThanOrEqual(step)
					sent.push(step)
					remindedOn = today
				}
				expect(sent).toEqual(reminderDays.filter((step) => sent.includes(step)))
				if (daysBetween(dueOn, today) >= 91) expect(sent.at(-1)).toBe(91)
			}),
			{ examples: [[[19, 34, 37, 1]]] },
		)
	})
})

describe('a reminder by hand', () => {
	test.each([
		['nothing open', owed(null, 0), '2026-12-01', 'nothing is open'],
		['on its day', owed(null), '2026-10-20', 'not past due'],
		['the day after', owed(null), '2026-10-21', null],
		['reminded that day', owed('2026-11-03'), '2026-11-03', 'reminded lately'],
		['reminded the day before', owed('2026-11-03'), '2026-11-04', 'reminded lately'],
		['reminded two days before', owed('2026-11-03'), '2026-11-05', null],
	] as const)('%s', (_, of, today, why) => {
		expect(notToRemind(of, day(today))).toBe(why)
	})

	test('is told why not', () => {
		expect(notRemindedInWords('reminded lately')).toBe(
			'They were reminded in the last two days. Nobody was reminded again.',
		)
	})
})
