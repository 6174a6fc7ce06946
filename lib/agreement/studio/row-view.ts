import { days, fullDay, shortDay } from '../../format/day'
import { type Day, dayOf, daysBetween, type Moment } from '../../units/day'
import type { State } from '../state'
import { isLately } from './lately'

type Facts = {
	readonly state: State
	readonly from: Day | null
	readonly to: Day | null
	readonly signBy: Day | null
	readonly issuedAt: Moment | null
	readonly seenAt: Moment | null
	readonly remindedAt: Moment | null
	readonly answeredAt: Moment | null
	readonly undeliveredAt: Moment | null
	readonly holdsUntil: Day | null
}

/** A row of the studio's list in finished words. */
export type AgreementRowView = {
	readonly state: string
	readonly term: string
	readonly waiting: string
	readonly left: string
	readonly isSoon: boolean
	readonly more: string
	readonly remindedOn: string
	readonly isLately: boolean
}

const soonDays = 3

function leftInWords(left: number): string {
	if (left < 0) return `${days(-left)} over`
	return left === 0 ? 'today' : `${days(left)} left`
}

const sinceInWords = (count: number) => (count === 0 ? 'since today' : days(count))

function stateWords(state: State, holdsUntil: Day | null): string {
	const holds = 'inForce' in state && state.inForce !== null
	switch (state.is) {
		case 'drafting':
			return 'Being written'
		case 'to be signed':
			return holds ? 'To be signed; the one before holds' : 'To be signed'
		case 'signed':
			return 'Signed'
		case 'declined':
			return holds ? 'Declined; the one before holds' : 'Declined'
		case 'ended':
			return holds && holdsUntil !== null ? `Ends ${fullDay(holdsUntil)}` : 'Ended'
		default:
			return state satisfies never
	}
}

/** Days waited and left, opened, reminded, from when to when, as the list shows them on `today` in `timeZone`. */
export function agreementRowView(row: Facts, now: Moment, timeZone: string): AgreementRowView {
	const on = (at: Moment | null) => (at === null ? null : dayOf(at, timeZone))
	const today = dayOf(now, timeZone)
	const isOut = row.state.is === 'to be signed'
	const since = isOut ? on(row.issuedAt) : row.state.is === 'declined' ? on(row.answeredAt) : null
	const left = isOut && row.signBy !== null ? daysBetween(today, row.signBy) : null
	const [seen, reminded] = [on(row.seenAt), on(row.remindedAt)]
	const opened = seen === null ? 'not opened yet' : `opened ${shortDay(seen)}`
	const arrived = row.undeliveredAt === null ? [] : ['mail did not arrive']
	const asked = reminded === null ? [] : [`reminded ${shortDay(reminded)}`]
	return {
		state: stateWords(row.state, row.holdsUntil),
		term: row.from === null || row.to === null ? '' : `${fullDay(row.from)} – ${fullDay(row.to)}`,
		waiting: since === null ? '' : sinceInWords(daysBetween(since, today)),
		left: left === null ? '' : leftInWords(left),
		isSoon: left !== null && left <= soonDays,
		more: isOut ? [...arrived, opened, ...asked].join(', ') : '',
		remindedOn: reminded === null ? '' : shortDay(reminded),
		isLately: isLately(row.remindedAt, now),
	}
}
