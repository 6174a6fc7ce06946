import type { Group } from '../../season/group'
import type { State } from '../state'

/** Whose move it is. Reminders go to the first group alone. */
export function agreementGroup(state: State): Group {
	switch (state.is) {
		case 'to be signed':
			return 'waiting for them'
		case 'drafting':
		case 'declined':
			return 'waiting for us'
		case 'signed':
		case 'ended':
			return 'settled'
		default:
			return state satisfies never
	}
}
