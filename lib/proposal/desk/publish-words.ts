import { longDay } from '../../format/day'
import { list } from '../../format/words'
import type { Day } from '../../units/day'
import type { Desk } from './desk'

export type Recipient = { readonly name: string; readonly may: 'approve' | 'look' }
type Publishing = {
	readonly recipients: readonly Recipient[]
	readonly answerBy: Day | null
	readonly options: readonly (Pick<Desk['options'][number], 'margin' | 'mend'> & { readonly name: string })[]
}

const namesOf = (recipients: readonly Recipient[], may: Recipient['may'], what: string): string[] => {
	const names = recipients.filter((each) => each.may === may).map(({ name }) => name)
	return names.length === 0 ? [] : [`${list(names)} (may ${what})`]
}

/** What publishing does, before it is done: to whom it is mailed, until when they may answer, what is left of each palette. */
export function publishWords({ recipients, answerBy, options }: Publishing): string {
	const to = [...namesOf(recipients, 'approve', 'answer'), ...namesOf(recipients, 'look', 'look')]
	const margins = options.map(({ name, margin, mend }) => {
		const of = options.length > 1 ? `${name}: margin` : 'Margin'
		return `${of} ${margin}${mend.length > 0 ? ', under your floor' : ''}.`
	})
	const by = answerBy === null ? [] : [`Answer by ${longDay(answerBy)}.`]
	return [`Goes by mail to ${list(to)}.`, ...by, ...margins].join(' ')
}
