import type { Refusal, State } from './state'

/** What a client is told when a signature was not taken. Nothing half was signed. */
export const signatureTold: Readonly<Record<Refusal, string>> = {
	'not issued yet': 'This agreement is being written. It will follow; there is nothing to sign until then.',
	'a newer document stands':
		'The agreement was changed while you were reading. Nothing was signed: look at what is different, then sign.',
	'nothing is different': 'Nothing is different from the agreement that stands. Nothing was sent.',
	'already signed': 'It had been signed a moment before. Nothing was signed a second time; the first signature stands.',
	declined: 'It had been declined before. Nothing was signed; write to us if you would still like it.',
	ended: 'This agreement has ended. Nothing was signed.',
	'nothing to end': 'There is nothing to end: nobody signed it.',
}

/** How an agreement stands, in a word or two on the client's own list. */
export function agreementInAWord(state: State): string {
	switch (state.is) {
		case 'drafting':
			return 'We are writing this'
		case 'to be signed':
			return state.inForce === null ? 'Waiting for your signature' : 'Waiting for your signature; the one before holds'
		case 'signed':
			return 'Signed'
		case 'declined':
			return state.inForce === null ? 'Declined' : 'Declined; the one before holds'
		case 'ended':
			return 'Ended'
		default:
			return state satisfies never
	}
}
