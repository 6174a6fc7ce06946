import type { Hash } from '../record/hash'
import type { Day } from '../units/day'

export const kept = ['drafting', 'to be signed', 'signed', 'declined', 'ended'] as const
/** What is stored of an agreement; that it has run out follows from the date. */
export type KeptState = (typeof kept)[number]

/**
 * Where an agreement stands. `issued` is the hash of the document that was issued last: what a signature has to name.
 * `inForce` is the one that both have signed and that holds today: while a new one waits, or when it is declined, the one
 * before goes on to hold.
 */
export type State =
	| { readonly is: 'drafting' }
	| { readonly is: 'signed'; readonly issued: Hash; readonly inForce: Hash }
	| { readonly is: 'to be signed' | 'declined' | 'ended'; readonly issued: Hash; readonly inForce: Hash | null }

/** A document that was issued or signed, with its last day; for one that was ended early, the day of the ending. */
export type Dated = { readonly hash: Hash; readonly until: Day }

export type Command =
	/** `supersedes` is what the studio saw as issued last, null for the first. */
	| { readonly do: 'issue'; readonly document: Hash; readonly supersedes: Hash | null }
	| { readonly do: 'sign' | 'decline'; readonly document: Hash }
	/** Of one that nobody has signed: takes it back. */
	| { readonly do: 'end' }

/** Why a step is refused, by name; in words: `told.ts`. */
export type Refusal =
	| 'not issued yet'
	| 'a newer document stands'
	| 'nothing is different'
	| 'already signed'
	| 'declined'
	| 'ended'
	| 'nothing to end'

/** What is stored after it. */
export type Decision =
	| { readonly ok: true; readonly to: KeptState; readonly issued: Hash; readonly inForce: Hash | null }
	| { readonly ok: false; readonly why: Refusal }

const refuse = (why: Refusal): Decision => ({ ok: false, why })

/** @throws when what is stored cannot be: issued without a document, or signed without one in force */
export function stateOf(stored: KeptState, issued: Dated | null, signed: Dated | null, today: Day): State {
	if (stored === 'drafting') return { is: stored }
	if (issued === null) throw new Error(`stateOf: "${stored}" without a document`)
	if (stored === 'signed' && signed === null) throw new Error('stateOf: signed, and nothing was')
	const inForce = signed !== null && today <= signed.until ? signed.hash : null
	if (stored === 'signed')
		return inForce === null
			? { is: 'ended', issued: issued.hash, inForce }
			: { is: 'signed', issued: issued.hash, inForce }
	const hasRunOut = stored === 'to be signed' && today > issued.until
	return { is: hasRunOut ? 'ended' : stored, issued: issued.hash, inForce }
}

function issue(state: State, document: Hash, supersedes: Hash | null): Decision {
	const [standing, inForce] = state.is === 'drafting' ? [null, null] : [state.issued, state.inForce]
	if (state.is === 'ended') return refuse('ended')
	if (supersedes !== standing) return refuse('a newer document stands')
	if (document === standing) return refuse('nothing is different')
	return { ok: true, to: 'to be signed', issued: document, inForce }
}

/** Why `state` takes no signature, and no refusal of one; null when it does. */
function closedBecause(state: State): Refusal | null {
	switch (state.is) {
		case 'drafting':
			return 'not issued yet'
		case 'to be signed':
			return null
		case 'signed':
			return 'already signed'
		case 'declined':
		case 'ended':
			return state.is
		default:
			return state satisfies never
	}
}

function answer(state: State, document: Hash, to: 'signed' | 'declined'): Decision {
	const closed = closedBecause(state)
	if (closed !== null || state.is === 'drafting') return refuse(closed ?? 'not issued yet')
	if (state.issued !== document) return refuse('a newer document stands')
	return { ok: true, to, issued: document, inForce: to === 'signed' ? document : state.inForce }
}

function end(state: State): Decision {
	if (state.is === 'drafting') return refuse('not issued yet')
	if (state.is === 'ended') return refuse('ended')
	if (state.is === 'declined' && state.inForce === null) return refuse('nothing to end')
	return { ok: true, to: 'ended', issued: state.issued, inForce: state.inForce }
}

/** Where a step leads from where an agreement stands, or why it is refused. The one place that decides. */
export function decide(state: State, command: Command): Decision {
	switch (command.do) {
		case 'issue':
			return issue(state, command.document, command.supersedes)
		case 'sign':
			return answer(state, command.document, 'signed')
		case 'decline':
			return answer(state, command.document, 'declined')
		case 'end':
			return end(state)
		default:
			return command satisfies never
	}
}
