import type { State } from '@/lib/agreement/state'
import { StateMark } from '../state-mark'

const like = {
	drafting: 'drafting',
	'to be signed': 'waiting for an answer',
	signed: 'approved',
	declined: 'change asked for',
	ended: 'lapsed',
} as const satisfies Record<State['is'], string>

/** The mark of a proposal that stands alike; the word is the agreement's own and stands beside it. */
export const AgreementMark = ({ state }: { readonly state: State }) => <StateMark state={like[state.is]} />
