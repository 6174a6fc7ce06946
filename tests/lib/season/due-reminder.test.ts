import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { dueReminder, isWaking, reminderDays } from '@/lib/season/due-reminder'
import { addDays, type Day, day, daysBetween } from '@/lib/units/day'

const answerBy = day('2026-10-20')
const publishedOn = day('2026-09-21')
const due = (today: string, remindedOn: string | null = null, published: Day = publishedOn) =>
	dueReminder(
		{ answerBy, remindedOn: remindedOn === null ? null : day(remindedOn), publishedOn: published },
		day(today),
	)

describe('a reminder by itself', () => {
	test.each([
		['eight days before: none yet', '2026-10-12', null, null],
		['seven days before', '2026-10-13', null, 7],
		['the next day, when it could not go on its own', '2026-10-14', null, 7],
		['not again on that day', '2026-10-13', '2026-10-13', null],
		['nor on the next', '2026-10-14', '2026-10-13', null],
		['three days before', '2026-10-17', '2026-10-13', 3],
		['three days before, reminded by hand the same morning', '2026-10-17', '2026-10-17', null],
		['after days of downtime the latest alone', '2026-10-18', null, 3],
		['one day before', '2026-10-19', '2026-10-17', 1],
		['on the day itself, when it could not go the day before', '2026-10-20', '2026-10-17', 1],
		['on the day itself, once', '2026-10-20', '2026-10-19', null],
		['after the day: none', '2026-10-21', null, null],
	] as const)('%s', (_, today, remindedOn, step) => {
		expect(due(today, remindedOn)).toBe(step)
	})

	test.each([
		['published the day before the seventh', '2026-10-12', '2026-10-13', null],
		['published two days before it', '2026-10-11', '2026-10-13', 7],
		['published after it: the third is the first', '2026-10-14', '2026-10-16', null],
		['published after it, three days before', '2026-10-14', '2026-10-17', 3],
		['published the day before the answer', '2026-10-19', '2026-10-20', null],
	] as const)('%s', (_, published, today, step) => {
		expect(due(today, null, day(published))).toBe(step)
	})

	test('from eight in the morning until eight in the evening', () => {
		expect([7, 8, 19, 20].map(isWaking)).toEqual([false, true, true, false])
	})
})

/** Days on which the house was awake, as offsets from publishing; a reminder by hand on some. */
const life = fc.record({
	span: fc.integer({ min: 0, max: 40 }),
	awake: fc
		.uniqueArray(fc.integer({ min: 0, max: 45 }), { maxLength: 46 })
		.map((days) => days.toSorted((a, b) => a - b)),
	byHand: fc.uniqueArray(fc.integer({ min: 0, max: 45 }), { maxLength: 4 }),
})

/** Goes through the days in order and sends what is due. */
function lived({ span, awake, byHand }: typeof life extends fc.Arbitrary<infer T> ? T : never) {
	const until = addDays(publishedOn, span)
	let remindedOn: Day | null = null
	const sent: { readonly on: Day; readonly step: number }[] = []
	for (let offset = 0; offset <= 45; offset += 1) {
		const today = addDays(publishedOn, offset)
		if (byHand.includes(offset) && today <= until) remindedOn = today
		if (!awake.includes(offset)) continue
		const step = dueReminder({ answerBy: until, remindedOn, publishedOn }, today)
		if (step === null) continue
		sent.push({ on: today, step })
		expect(today).not.toBe(remindedOn)
		remindedOn = today
	}
	return { until, sent }
}

describe('whatever days the house was awake on', () => {
	test('each reminder goes at most once, in the order of the steps, and on a day of its own', () => {
		fc.assert(
			fc.property(life, (one) => {
				const { sent } = lived(one)
				const steps = sent.map(({ step }) => step)
				expect(steps).toEqual([...new Set(steps)].toSorted((a, b) => b - a))
				expect(new Set(sent.map(({ on }) => on)).size).toBe(sent.length)
			}),
		)
	})

	test('none goes before its day, after the day to answer by, or within a day after publishing', () => {
		fc.assert(
			fc.property(life, (one) => {
				const { until, sent } = lived(one)
				for (const { on, step } of sent) {
					expect(daysBetween(on, until)).toBeLessThanOrEqual(step)
					expect(daysBetween(on, until)).toBeGreaterThanOrEqual(0)
					expect(daysBetween(publishedOn, on)).toBeGreaterThan(1)
				}
			}),
		)
	})

	test('what goes is the latest whose day has come', () => {
		fc.assert(
			fc.property(life, (one) => {
				const { until, sent } = lived(one)
				for (const { on, step } of sent) {
					const left = daysBetween(on, until)
					expect(step).toBe(Math.min(...reminderDays.filter((days) => days >= left)))
				}
			}),
		)
	})

	test('awake on every day, all that fell two days or more after publishing go, each on its day', () => {
		fc.assert(
			fc.property(fc.integer({ min: 0, max: 40 }), (span) => {
				const awake = Array.from({ length: 46 }, (_, n) => n)
				const { until, sent } = lived({ span, awake, byHand: [] })
				const wanted = reminderDays.filter((days) => span - days > 1)
				expect(sent).toEqual(wanted.map((step) => ({ on: addDays(until, -step), step })))
			}),
		)
	})
})
