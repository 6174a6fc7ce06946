import type { Refusal } from '../state'

export type NotPublished = Refusal | 'saved elsewhere' | 'sent before' | 'not waiting for us' | 'not ready' | 'hidden'

const notAny = 'It no longer waits for you: it was published or answered meanwhile.'

/** Why one of many drafts was not published, to the designer. */
export function notPublishedInWords(why: NotPublished): string {
	switch (why) {
		case 'hidden':
			return 'There is no such proposal in this season.'
		case 'saved elsewhere':
			return 'It was saved in another window since the list was made: look it through, then publish it.'
		case 'sent before':
			return 'It was published a moment before by the same form, and not a second time.'
		case 'not ready':
			return 'Something is missing in it by now: see the list.'
		case 'not waiting for us':
		case 'already approved':
		case 'already skipped':
		case 'cancelled':
		case 'installed':
		case 'withdrawn':
		case 'lapsed':
		case 'not published yet':
		case 'a newer revision stands':
		case 'a change was asked for':
		case 'not approved':
		case 'nothing to withdraw':
		case 'more than was approved':
			return notAny
		default:
			return why satisfies never
	}
}
