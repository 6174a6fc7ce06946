import { fullDay, longDay } from '../../format/day'
import type { Day } from '../../units/day'
import type { NotOffered } from '../answer'
import type { Refusal, State } from '../state'

export type AnswerRefusal = Refusal | NotOffered | 'sent before' | 'erased' | 'billed by the agreement'

/** What a client is told when an answer was not taken. Nothing half was done. */
const refusals: Record<AnswerRefusal, string> = {
	'not published yet': 'This design is being revised. A new revision will follow.',
	'a newer revision stands':
		'The design was revised while you were reading. Your answer was not taken: look at what changed, then answer.',
	'already approved': 'It had been approved a moment before. Your answer was not taken; the first one stands.',
	'already skipped': 'This season had been skipped a moment before. Your answer was not taken; the first one stands.',
	'a change was asked for':
		'A change had been asked for a moment before. Your answer was not taken; a new revision will follow.',
	lapsed: 'The day to answer by has passed. Your answer was not taken; write to us if you would still like it.',
	withdrawn: 'We have taken this proposal back. Your answer was not taken.',
	cancelled: 'This season has been cancelled. Your answer was not taken.',
	installed: 'This design is in already. Your answer was not taken.',
	'not approved': 'This has not been approved.',
	'nothing to withdraw': 'There is nothing to take back.',
	'more than was approved': 'More cannot remain due than was approved.',
	'that palette is not offered': 'That palette is not offered. Your answer was not taken: choose one of those below.',
	'that extra is not offered': 'One of the extras is not offered. Your answer was not taken: choose again below.',
	'that place is not in the design':
		'One of the palettes is for a place that is not in this design. Your answer was not taken: choose again below.',
	'that palette belongs where everything is left out':
		'One of the palettes is for a place where every container is left out. Your answer was not taken: choose again below.',
	'that container may not be left out':
		'That container belongs to the design and cannot be left out. Your answer was not taken.',
	'that part is not in the design':
		'One of your notes is about a part that is not in this design. Nothing was sent: ask again below.',
	'nothing would be left': 'Nothing would be left. Your answer was not taken: keep a container, or skip this season.',
	'that extra belongs where everything is left out':
		'One of the extras belongs where every container is left out. Your answer was not taken.',
	'sent before': 'This form has been sent before. Nothing was changed a second time.',
	erased: 'What stood here has been erased.',
	'billed by the agreement':
		'Your agreement asks for this season already, so this price would ask twice. Your answer was not taken: write to us, and we will put it right.',
}

/** Before an answer was tried: somebody who goes on choosing may still think of the revision before. */
export const revisedInWords =
	'The design was revised while you were reading. Nothing was answered: look at what changed, then answer.'

export const isRefusal = (text: string): text is AnswerRefusal => Object.hasOwn(refusals, text)
export const refusalInWords = (why: AnswerRefusal): string => refusals[why]

/** How a season stands, in a word or two on the client's own list. */
export const inAWord: Record<State['is'], string> = {
	drafting: 'We are revising this',
	'waiting for an answer': 'Waiting for your answer',
	'change asked for': 'Change asked for; we are revising this',
	approved: 'Approved',
	skipped: 'Skipped',
	cancelled: 'Cancelled',
	installed: 'It is in',
	withdrawn: 'Taken back',
	lapsed: 'The day to answer by has passed',
}

type Given = {
	readonly on: Day
	/** "by Maud Marrowby" */
	readonly by: string
	readonly reference: string
	readonly purchaseOrder: string
}

/** How a proposal stands, to the client; null while it waits for their answer. */
export function standsInWords(state: State, given: Given | undefined): string | null {
	const order = given?.purchaseOrder ? `, purchase order ${given.purchaseOrder}` : ''
	const answered = given ? ` on ${fullDay(given.on)} ${given.by}, reference ${given.reference}${order}` : ''
	switch (state.is) {
		case 'waiting for an answer':
			return null
		case 'drafting':
			return 'We are revising this design. A new revision will follow; there is nothing to do until then.'
		case 'change asked for':
			return `A change was asked for${answered}. We are revising the design.`
		case 'approved':
			return `Approved${answered}.`
		case 'installed':
			return given ? `Approved${answered}, and in.` : 'This design is in.'
		case 'skipped':
			return `This season was skipped${answered}.`
		case 'cancelled':
			return 'This season has been cancelled: nothing of it goes in.'
		case 'withdrawn':
			return 'We have taken this proposal back. There is nothing to answer.'
		case 'lapsed':
			return `The day to answer by, ${longDay(state.answerBy)}, has passed. Write to us if you would still like it.`
		default:
			return state satisfies never
	}
}
