import { fullDay } from '../../format/day'
import type { Day } from '../../units/day'
import type { State } from '../state'

export type Stands = {
	readonly state: State
	readonly from: Day
	readonly to: Day
	readonly signBy: Day
	/** Who signed for the client, and when, once somebody did. */
	readonly signed: { readonly name: string; readonly on: Day } | undefined
}

/** How an agreement stands, in a sentence or two on the client's own page. */
export function stands({ state, from, to, signBy, signed }: Stands): string {
	switch (state.is) {
		case 'drafting':
			return 'We are writing this agreement.'
		case 'to be signed':
			return `It waits for your signature until ${fullDay(signBy)}.${state.inForce === null ? '' : ' Until then the one before holds.'}`
		case 'signed':
			return `${signed === undefined ? 'Signed' : `Signed by ${signed.name} on ${fullDay(signed.on)}`}. It holds from ${fullDay(from)} to ${fullDay(to)}.`
		case 'declined':
			return `It was declined.${state.inForce === null ? ' Write to us if you would still like it.' : ' The one before holds.'}`
		case 'ended':
			return 'It has ended. What was signed stays here to be read.'
		default:
			return state satisfies never
	}
}
