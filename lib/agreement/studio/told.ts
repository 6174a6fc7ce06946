import type { EndingRefusal } from '../ending/ending'
import { endingTold } from '../ending/told'
import type { Refusal } from '../state'

type Why =
	| Refusal
	| 'saved elsewhere'
	| 'sent before'
	| 'not waiting for them'
	| 'erased'
	| 'billed twice'
	| 'before it was issued'
	| 'still to come'
	| 'renewed before'

/** Why an act of the studio's was not done, and what to do. */
export const studioTold: Readonly<Record<Why | EndingRefusal, string>> = {
	...endingTold,
	'not issued yet': 'It was not issued yet: nothing is out that could be signed or ended.',
	'a newer document stands': 'A newer one was issued meanwhile. Look at it, then do it again.',
	'nothing is different': 'Nothing is different from what was issued last. Nothing was sent.',
	'already signed': 'It was signed meanwhile. Nothing was changed.',
	declined: 'It was declined. Change it and issue it again, or leave it.',
	ended: 'It has ended. Begin a new one.',
	'nothing to end': 'Nobody signed it, so there is nothing to end.',
	'saved elsewhere': 'It was saved in another window meanwhile. Open it again; what you typed is still here.',
	'sent before': 'This was sent before. Nothing was done a second time.',
	'not waiting for them': 'Nobody was reminded: no signature is waited for any more.',
	erased: 'The client’s words were erased. Nothing can be signed.',
	'billed twice':
		'One of these seasons is asked for already, by another agreement that both have signed or by an approved proposal. End the one, open the other again, or issue this one without the season.',
	'before it was issued': 'That day lies before the agreement was issued.',
	'still to come': 'That day is still to come.',
	'renewed before': 'It was renewed before. Open the one that renews it.',
}
