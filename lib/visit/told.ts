import type { VisitRefusal } from './decide'

/** What is wrong and what to do, as the visit's form says it. */
export const visitTold: Readonly<Record<VisitRefusal, string>> = {
	'too far ahead': 'That is more than a year ahead. Look at the year.',
	'day is over': 'That day is over. Choose a day to come, or write the visit down as made.',
	'not yet': 'That day is still to come. Plan the visit for it, and write it down when it was made.',
	'too long ago': 'That is more than five years ago. Look at the year.',
	'made already': 'This visit was made, and stays so. What is written about it can be put right.',
	dropped: 'This visit was dropped. Plan it again first.',
}
