import { addDays, type Day } from '../units/day'
import type { VisitState } from './visit'

export type VisitCommand =
	| { readonly do: 'plan'; readonly day: Day }
	| { readonly do: 'record'; readonly day: Day }
	| { readonly do: 'drop' }

/** Why a step is refused, by name; in words: `told.ts`. */
export type VisitRefusal = 'too far ahead' | 'day is over' | 'not yet' | 'too long ago' | 'made already' | 'dropped'

/** What was done to the visit: of a made one only the words and the day are put right. */
export type VisitStep = 'planned' | 'made' | 'corrected' | 'dropped'

export type VisitDecision =
	| { readonly ok: true; readonly to: VisitState; readonly step: VisitStep }
	| { readonly ok: false; readonly why: VisitRefusal }

/** A season is planned within a year; a visit is written down within five. Common practice, no published source. */
const mostDays = { ahead: 366, ago: 5 * 366 }

const refuse = (why: VisitRefusal): VisitDecision => ({ ok: false, why })

function plan(state: VisitState, day: Day, today: Day): VisitDecision {
	if (state === 'done') return refuse('made already')
	if (day < today) return refuse('day is over')
	return day > addDays(today, mostDays.ahead) ? refuse('too far ahead') : { ok: true, to: 'planned', step: 'planned' }
}

function record(state: VisitState, day: Day, today: Day): VisitDecision {
	if (state === 'dropped') return refuse('dropped')
	if (day > addDays(today, mostDays.ahead)) return refuse('too far ahead')
	if (day > today) return refuse('not yet')
	if (day < addDays(today, -mostDays.ago)) return refuse('too long ago')
	return { ok: true, to: 'done', step: state === 'done' ? 'corrected' : 'made' }
}

function drop(state: VisitState): VisitDecision {
	if (state === 'done') return refuse('made already')
	return state === 'dropped' ? refuse('dropped') : { ok: true, to: 'dropped', step: 'dropped' }
}

/** Where a step leads from where a visit stands `today`, or why it is refused. A visit that was made stays made. */
export function decide(state: VisitState, command: VisitCommand, today: Day): VisitDecision {
	switch (command.do) {
		case 'plan':
			return plan(state, command.day, today)
		case 'record':
			return record(state, command.day, today)
		case 'drop':
			return drop(state)
		default:
			return command satisfies never
	}
}
