import { fullDay } from '../../format/day'
import type { MoneyFormat } from '../../format/money'
import { capital } from '../../format/words'
import { seasonName } from '../../season/season'
import { addDays } from '../../units/day'
import type { Bill, BillPart } from '../bills/bill'
import type { Clash } from '../bills/clashes'
import { chargeCents } from '../charge'

function partInWords(part: BillPart): string {
	switch (part.is) {
		case 'whole':
			return 'All of it'
		case 'deposit':
			return 'Deposit'
		case 'balance':
			return 'Balance'
		case 'remains':
			return 'What remains due'
		case 'instalment':
			return `Instalment ${part.nth} of ${part.of}`
		default:
			return part satisfies never
	}
}

/** "Deposit, $237.00": of one that was asked for, whose invoice has a day of its own. */
export const askedInWords = ({ part, charge }: Bill, money: MoneyFormat): string =>
	`${partInWords(part)}, ${money(chargeCents(charge))}`

/** "Deposit, $237.00, due 9 October 2026"; "Balance, $236.82, once it is in" */
export function billInWords(bill: Bill, money: MoneyFormat): string {
	const { dated } = bill
	const when = dated === null ? 'once it is in' : `due ${fullDay(addDays(dated.on, dated.netDays))}`
	return `${askedInWords(bill, money)}, ${when}`
}

const clashWords: Record<Clash['is'], string> = {
	'billed by both':
		'would be billed twice, by the agreement and by its proposal. Open the proposal again, or leave the season out of the agreement.',
	'billed by two agreements': 'would be billed by two agreements. End the one, or leave the season out of the other.',
	'billed by neither':
		'was priced by an agreement that does not stand. Publish its proposal again, so that the season has a price of its own.',
}

export const clashInWords = ({ is, season }: Clash): string => `${capital(seasonName(season))} ${clashWords[is]}`
