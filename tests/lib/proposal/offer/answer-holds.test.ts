import { expect, test } from 'vitest'
import { type AnswerKind, answerHolds } from '@/lib/proposal/offer/answer-holds'
import { kept, type State } from '@/lib/proposal/state'

const states: readonly State['is'][] = [...kept, 'lapsed']

test.each<{ kind: AnswerKind; in: readonly State['is'][] }>([
	{ kind: 'approval', in: ['approved', 'installed'] },
	{ kind: 'change asked for', in: ['change asked for'] },
	{ kind: 'skip', in: ['skipped'] },
])(
	'an answer of the kind “$kind” holds while $in, and never when it was reopened, cancelled or taken back',
	({ kind, in: holding }) => {
		expect(states.filter((state) => answerHolds(kind, state))).toEqual(holding)
	},
)
