import type { Day } from '../../units/day'
import { addMonths } from './months'
import type { Due } from './plan'

/** What has happened so far: the day of the client's signature, and of each visit that was made. */
export type Happened = {
	readonly approvedOn: Day | null
	readonly madeOn: (visit: Extract<Due, { is: 'at visit' }>) => Day | null
}

/** The day on which it falls due; null while that follows from what has not happened yet. */
export function dueDay(due: Due, { approvedOn, madeOn }: Happened): Day | null {
	switch (due.is) {
		case 'on':
			return due.day
		case 'on approval':
			return approvedOn === null ? null : addMonths(approvedOn, due.monthsLater)
		case 'at visit':
			return madeOn(due)
		default:
			return due satisfies never
	}
}
