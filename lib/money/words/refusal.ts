import type { Credited } from '../invoice/credit-note'
import type { EntryRefusal } from '../ledger/enter'

export type MoneyRefusal = EntryRefusal | Extract<Credited, { ok: false }>['why']

const refusals: Record<MoneyRefusal, string> = {
	'dated ahead': 'That day has not come yet. Nothing was written: give the day on which it happened.',
	'number given before': 'That number has been given before. Nothing was written a second time.',
	'no such invoice': 'There is no such invoice for this client. Nothing was written.',
	'more than the invoice has open':
		'That is more than the invoice has open. Nothing was written: put the amount right, name no invoice to spread it over all that is open, or say that the rest is kept for the client.',
	'more than is due':
		'That is more than is due. Nothing was written: put the amount right, or say that the rest is kept for the client.',
	'more than their credit':
		'That is more than is kept for this client. Nothing was written: give back that much at most.',
	'more than is left of the invoice':
		'That is more than is left of the invoice. Nothing was written: credit that much at most.',
	'more than is open': 'That is more than the invoice has open. Nothing was written: write off that much at most.',
	'no such entry': 'There is no such entry for this client. Nothing was undone.',
	'undone already': 'That has been undone already. Nothing was undone a second time.',
	'undoes nothing by itself': 'That line only undoes another and cannot be undone. Write what should stand anew.',
	'corrected by a credit note':
		'An invoice and a credit note stay as they are. Put an invoice right by a credit note to it and a new invoice.',
	'given back since': 'That money has been given back since. Undo the refund first.',
	'nothing to credit': 'There is nothing to credit. Give an amount above zero.',
	'no reason given': 'Say why, in a few words. Nothing was written.',
}

export const isMoneyRefusal = (text: string): text is MoneyRefusal => Object.hasOwn(refusals, text)
export const moneyRefusalInWords = (why: MoneyRefusal): string => refusals[why]
