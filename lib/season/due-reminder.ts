import { addDays, type Day, daysBetween } from '../units/day'

/** Days before the day to answer by on which a reminder goes by itself. */
export const reminderDays = [7, 3, 1] as const
export type ReminderDay = (typeof reminderDays)[number]

/** Whole days after publishing before a reminder may follow. */
const quietDays = 1

/** What is kept of a proposal that waits for an answer; calendar dates in the studio's time zone. */
export type Awaited = {
	readonly answerBy: Day
	/** The last reminder of the revision that stands, by whomever. */
	readonly remindedOn: Day | null
	readonly publishedOn: Day
}

/**
 * The reminder that is due on `today`; null when none is. Each goes at most once; after days on which nothing could be
 * sent only the latest goes; none after the day to answer by, none that fell within a day after publishing, and none
 * that a reminder of its day or a later one has made needless.
 */
export function dueReminder({ answerBy, remindedOn, publishedOn }: Awaited, today: Day): ReminderDay | null {
	const left = daysBetween(today, answerBy)
	const step = left < 0 ? undefined : reminderDays.findLast((days) => left <= days)
	if (step === undefined) return null
	const on = addDays(answerBy, -step)
	if (daysBetween(publishedOn, on) <= quietDays) return null
	return remindedOn !== null && remindedOn >= on ? null : step
}

/** Hours of the studio's wall clock between which a reminder goes by itself: from the first, before the last. */
const wakingHours = { from: 8, to: 20 }

export const isWaking = (hour: number): boolean => hour >= wakingHours.from && hour < wakingHours.to
