import type { Day } from '../../units/day'
import type { KeptState } from '../state'

type Standing = { readonly state: KeptState; readonly holdsUntil: Day | null }
type Closed = { readonly to: KeptState; readonly holdsUntil: Day | null; readonly is: 'taken back' | 'ended' | null }

/** What becomes of a client's agreement when the client is erased: what is out is taken back, what holds ends that day. */
export function afterErasure({ state, holdsUntil }: Standing, today: Day): Closed {
	const isHolding = holdsUntil !== null && holdsUntil > today
	if (isHolding) return { to: 'ended', holdsUntil: today, is: 'ended' }
	return state === 'to be signed' ? { to: 'ended', holdsUntil, is: 'taken back' } : { to: state, holdsUntil, is: null }
}
