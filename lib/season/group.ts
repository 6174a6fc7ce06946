import type { State } from '../proposal/state'

export const groups = ['waiting for them', 'waiting for us', 'settled'] as const
export type Group = (typeof groups)[number]

/** Whose move it is. Reminders go to the first group alone. */
export function groupOf(state: State['is']): Group {
	switch (state) {
		case 'waiting for an answer':
			return 'waiting for them'
		case 'drafting':
		case 'change asked for':
			return 'waiting for us'
		case 'approved':
		case 'skipped':
		case 'cancelled':
		case 'installed':
		case 'withdrawn':
		case 'lapsed':
			return 'settled'
		default:
			return state satisfies never
	}
}
