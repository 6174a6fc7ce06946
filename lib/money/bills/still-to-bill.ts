import { type Cents, cents, sum } from '../../units/cents'
import type { Day } from '../../units/day'
import { chargeCents } from '../charge'
import type { InvoiceNumber } from '../invoice/number'
import type { Bill, Issued } from './bill'

/** Invoices that are still to be written, and credit notes for what was asked for and is not owed any more. */
export type StillToBill = {
	readonly invoices: readonly Bill[]
	readonly credits: readonly { readonly number: InvoiceNumber; readonly cents: Cents }[]
}

/** Out of several invoices of one bill the latest gives way first. */
function creditsFor(issued: readonly Issued[], owed: Cents) {
	let over = Math.max(0, sum(issued.map(({ leftCents }) => leftCents)) - owed)
	return issued.toReversed().flatMap(({ number, leftCents }) => {
		const back = cents(Math.min(over, leftCents))
		over -= back
		return back === 0 ? [] : [{ number, cents: back }]
	})
}

/**
 * What is to be done so that every bill of a client is asked for once and nothing else is: a bill that has an invoice
 * gets no second one, whatever was credited of it by hand.
 */
export function stillToBill(bills: readonly Bill[], issued: readonly Issued[], today: Day): StillToBill {
	const asked = new Set(issued.map(({ key }) => key))
	const owed = new Map(bills.map(({ key, charge }) => [key, chargeCents(charge)]))
	return {
		invoices: bills.filter(({ key, dated }) => dated !== null && dated.on <= today && !asked.has(key)),
		credits: [...asked].flatMap((key) =>
			creditsFor(
				issued.filter((each) => each.key === key),
				owed.get(key) ?? cents(0),
			),
		),
	}
}
