import type { Cents } from '../../units/cents'
import { addDays, type Day, daysBetween } from '../../units/day'
import { daysLate } from './band'

/** Days past due on which a reminder goes by itself: a week, and as each of the later bands begins. Common practice, no published source. */
export const reminderDays = [7, 31, 61, 91] as const
export type ReminderDay = (typeof reminderDays)[number]

/** Whole days between two reminders of one invoice, by whomever. */
const quietDays = 2

/** An invoice that is waited for; calendar dates in the studio's time zone. */
export type Owed = {
	readonly dueOn: Day
	readonly openCents: Cents
	/** The last reminder of it, by whomever; null when there was none. */
	readonly remindedOn: Day | null
}

const isLately = ({ remindedOn }: Owed, today: Day) => remindedOn !== null && daysBetween(remindedOn, today) < quietDays

/** Why nobody is to be reminded by hand; null when it may go. Lately reminded: only when it is said again. */
export function notToRemind(owed: Owed, today: Day): 'nothing is open' | 'not past due' | 'reminded lately' | null {
	if (owed.openCents <= 0) return 'nothing is open'
	if (daysLate(owed.dueOn, today) === 0) return 'not past due'
	return isLately(owed, today) ? 'reminded lately' : null
}

/**
 * The reminder that goes by itself on `today`; null when none does. Each goes at most once; after days on which nothing
 * could be sent only the latest goes; none within two days after another, and none that one of its day or a later one
 * has made needless.
 */
export function reminderDue(owed: Owed, today: Day): ReminderDay | null {
	if (notToRemind(owed, today) !== null) return null
	const late = daysLate(owed.dueOn, today)
	const step = reminderDays.findLast((days) => days <= late)
	if (step === undefined) return null
	const isNeedless = owed.remindedOn !== null && owed.remindedOn >= addDays(owed.dueOn, step)
	return isNeedless ? null : step
}
