import type { State } from '../state'

export type AnswerKind = 'approval' | 'change asked for' | 'skip'

const holdsWhile: Record<AnswerKind, readonly State['is'][]> = {
	approval: ['approved', 'installed'],
	'change asked for': ['change asked for'],
	skip: ['skipped'],
}

/** Whether an answer is what the proposal rests on now: one that was reopened, cancelled or taken back since is not. */
export const answerHolds = (kind: AnswerKind, state: State['is']): boolean => holdsWhile[kind].includes(state)
