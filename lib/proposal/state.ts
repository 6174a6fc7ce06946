import type { Hash } from '../record/hash'
import type { Day } from '../units/day'

export const kept = [
	'drafting',
	'waiting for an answer',
	'change asked for',
	'approved',
	'skipped',
	'cancelled',
	'installed',
	'withdrawn',
] as const
/** What is stored of a proposal; that it has lapsed follows from the date. */
export type KeptState = (typeof kept)[number]

/** Of a proposal that stands so nothing goes in, and nothing is bought for it. */
export const staysOut: readonly KeptState[] = ['skipped', 'withdrawn', 'cancelled']
const out: ReadonlySet<string> = new Set(staysOut)
export const isOut = (state: State['is']): boolean => out.has(state)

/** Where a proposal stands. `revision` is the hash of the one that stands: what an answer has to name. */
export type State =
	| { readonly is: 'drafting' }
	| { readonly is: 'waiting for an answer' | 'lapsed'; readonly revision: Hash; readonly answerBy: Day }
	| { readonly is: Exclude<KeptState, 'drafting' | 'waiting for an answer'>; readonly revision: Hash }

export type Command = { readonly do: 'publish' | 'withdraw' | 'reopen' | 'cancel' | 'install' } | AnswerCommand

/** An answer names the revision that it is to. */
export type AnswerCommand = { readonly do: 'approve' | 'ask for a change' | 'skip'; readonly revision: Hash }

/** Why a step is refused, by name. */
export type Refusal =
	| 'not published yet'
	| 'a newer revision stands'
	| 'already approved'
	| 'already skipped'
	| 'a change was asked for'
	| 'lapsed'
	| 'withdrawn'
	| 'cancelled'
	| 'installed'
	| 'not approved'
	| 'nothing to withdraw'
	| 'more than was approved'

export type Decision = { readonly ok: true; readonly to: KeptState } | { readonly ok: false; readonly why: Refusal }

const to = (state: KeptState): Decision => ({ ok: true, to: state })
const refuse = (why: Refusal): Decision => ({ ok: false, why })

export function stateOf(stored: KeptState, revision: Hash | null, answerBy: Day | null, today: Day): State {
	if (stored === 'drafting') return { is: 'drafting' }
	if (revision === null) throw new Error(`stateOf: "${stored}" without a revision`)
	if (stored !== 'waiting for an answer') return { is: stored, revision }
	if (answerBy === null) throw new Error('stateOf: waiting for an answer without a day to answer by')
	return { is: today > answerBy ? 'lapsed' : stored, revision, answerBy }
}

/** Why `state` takes no answer; null when it does. */
function closedBecause(state: State): Refusal | null {
	switch (state.is) {
		case 'drafting':
			return 'not published yet'
		case 'waiting for an answer':
			return null
		case 'approved':
			return 'already approved'
		case 'skipped':
			return 'already skipped'
		case 'change asked for':
			return 'a change was asked for'
		case 'lapsed':
		case 'withdrawn':
		case 'cancelled':
		case 'installed':
			return state.is
		default:
			return state satisfies never
	}
}

const answers = { approve: 'approved', 'ask for a change': 'change asked for', skip: 'skipped' } as const

function answer(state: State, command: AnswerCommand): Decision {
	const closed = closedBecause(state)
	if (closed !== null) return refuse(closed)
	return 'revision' in state && state.revision === command.revision
		? to(answers[command.do])
		: refuse('a newer revision stands')
}

/** A settled yes has to be reopened before anything new is published. */
function publish(state: State): Decision {
	const isClosed = state.is === 'approved' || state.is === 'cancelled' || state.is === 'installed'
	return isClosed ? refuse(closedBecause(state) ?? 'already approved') : to('waiting for an answer')
}

function withdraw(state: State): Decision {
	const isOut = state.is === 'waiting for an answer' || state.is === 'lapsed' || state.is === 'change asked for'
	return isOut ? to('withdrawn') : refuse('nothing to withdraw')
}

const fromApproved = (state: State, next: KeptState): Decision =>
	state.is === 'approved' ? to(next) : refuse(state.is === 'installed' ? 'installed' : 'not approved')

/** What becomes of a proposal that was published when its client is erased: nobody answers or revises it any more. */
export function afterErasure(state: KeptState): KeptState {
	switch (state) {
		case 'drafting':
		case 'waiting for an answer':
		case 'change asked for':
			return 'withdrawn'
		case 'approved':
		case 'skipped':
		case 'cancelled':
		case 'installed':
		case 'withdrawn':
			return state
		default:
			return state satisfies never
	}
}

/** Where a step leads from where a proposal stands, or why it is refused. The one place that decides. */
export function decide(state: State, command: Command): Decision {
	switch (command.do) {
		case 'publish':
			return publish(state)
		case 'approve':
		case 'ask for a change':
		case 'skip':
			return answer(state, command)
		case 'withdraw':
			return withdraw(state)
		case 'reopen':
			return fromApproved(state, 'drafting')
		case 'cancel':
			return fromApproved(state, 'cancelled')
		case 'install':
			return fromApproved(state, 'installed')
		default:
			return command satisfies never
	}
}
