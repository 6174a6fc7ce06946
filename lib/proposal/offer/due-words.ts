import type { MoneyFormat } from '../../format/money'
import { list } from '../../format/words'
import type { Due, When } from '../../pricing/quote/due'
import type { Cents } from '../../units/cents'

function whenInWords(when: When): string {
	switch (when.is) {
		case 'on approval':
			return 'on approval'
		case 'at install':
			return 'when it is in'
		case 'after install':
			return `within ${when.days} days after it is in`
		case 'by agreement':
			return 'by the instalments of your agreement'
		default:
			return when satisfies never
	}
}

/** "$237.00 on approval and $236.82 when it is in" */
export function dueInWords(due: readonly Due[], money: MoneyFormat): string {
	return list(due.map(({ cents, when }) => `${money(cents)} ${whenInWords(when)}`))
}

/** What is still to be paid of a season that was cancelled after its approval. */
export const remainsInWords = (remains: Cents, money: MoneyFormat): string =>
	remains === 0 ? 'Nothing remains due.' : `${money(remains)} remains due, tax included.`
