import type { Hash } from '../record/hash'
import type { Day } from '../units/day'
import { type Dated, type KeptState, type State, stateOf } from './state'

type Kept = {
	readonly state: KeptState
	readonly issued: Hash | null
	readonly to: Day | null
	readonly inForce: Hash | null
	readonly holdsUntil: Day | null
}

const dated = (hash: Hash | null, until: Day | null): Dated | null =>
	hash === null || until === null ? null : { hash, until }

/** Where an agreement stands on a day of the studio's time zone, from its row. */
export const standingOf = ({ state, issued, to, inForce, holdsUntil }: Kept, today: Day): State =>
	stateOf(state, dated(issued, to), dated(inForce, holdsUntil), today)
