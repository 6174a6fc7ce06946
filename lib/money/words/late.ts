import { days } from '../../format/day'
import type { MoneyFormat } from '../../format/money'
import { numberWord } from '../../format/words'
import type { LateInvoice, LateList } from '../late/late-list'
import type { notToRemind } from '../late/reminder'

/** "Invoice 2026-0007: $120.00 open, 12 days past due" */
export const lateInWords = ({ number, openCents, daysLate }: LateInvoice, money: MoneyFormat): string =>
	`Invoice ${number}: ${money(openCents)} open, ${days(daysLate)} past due`

/** "Three clients owe $1,204.00 past its day." */
export function lateListInWords({ clients, lateCents }: LateList, money: MoneyFormat): string {
	if (clients.length === 0) return 'Nobody is late.'
	const who = clients.length === 1 ? 'client owes' : 'clients owe'
	return `${numberWord(clients.length)} ${who} ${money(lateCents)} past its day.`
}

const whyNot: Record<NonNullable<ReturnType<typeof notToRemind>>, string> = {
	'nothing is open': 'Nothing of it is open. Nobody was reminded.',
	'not past due': 'Its day has not passed. Nobody was reminded.',
	'reminded lately': 'They were reminded in the last two days. Nobody was reminded again.',
}

export const notRemindedInWords = (why: keyof typeof whyNot): string => whyNot[why]
