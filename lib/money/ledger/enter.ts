import type { Cents } from '../../units/cents'
import type { Day } from '../../units/day'
import type { InvoiceNumber } from '../invoice/number'
import { type Account, accountOf, type OpenInvoice } from './account'
import { standing } from './effect'
import type { CounterEntry, Entry, Ledger, Moving } from './entry'

/** Why an entry is not written, by name; in words: `words/refusal.ts`. */
export type EntryRefusal =
	| 'dated ahead'
	| 'number given before'
	| 'no such invoice'
	| 'more than the invoice has open'
	| 'more than is due'
	| 'more than their credit'
	| 'more than is left of the invoice'
	| 'more than is open'
	| 'no such entry'
	| 'undone already'
	| 'undoes nothing by itself'
	| 'corrected by a credit note'
	| 'given back since'

export type Entered = { readonly ok: true } | { readonly ok: false; readonly why: EntryRefusal }

export type Entering = {
	readonly today: Day
	/** The client knows that they pay more than is due, and leaves it with the studio. */
	readonly keepRest: boolean
}

const taken: Entered = { ok: true }
const refuse = (why: EntryRefusal): Entered => ({ ok: false, why })
const unless = (isMore: boolean, why: EntryRefusal): Entered => (isMore ? refuse(why) : taken)

const find = ({ invoices }: Account, number: InvoiceNumber): OpenInvoice | undefined =>
	invoices.find((each) => each.number === number)

function pay(account: Account, amount: Cents, invoice: InvoiceNumber | null, keepRest: boolean): Entered {
	const found = invoice === null ? null : find(account, invoice)
	if (found === undefined) return refuse('no such invoice')
	if (keepRest) return taken
	if (found !== null) return unless(amount > found.openCents, 'more than the invoice has open')
	return unless(amount > account.openCents, 'more than is due')
}

function undo(ledger: Ledger, counter: CounterEntry): Entered {
	const found = ledger.find(({ id }) => id === counter.of)
	if (found === undefined) return refuse('no such entry')
	if (found.is === 'counter-entry') return refuse('undoes nothing by itself')
	if (!standing(ledger).some(({ id }) => id === counter.of)) return refuse('undone already')
	if (found.is === 'invoice' || found.is === 'credit note') return refuse('corrected by a credit note')
	return unless(accountOf([...ledger, counter]).creditCents < 0, 'given back since')
}

const hasNumber = (ledger: Ledger, entry: Moving) =>
	'number' in entry && ledger.some((each) => 'number' in each && each.number === entry.number)

/** Credit notes and write-offs, each no more than there is to take off. */
function takeOff(
	account: Account,
	{ invoice, cents }: { readonly invoice: InvoiceNumber; readonly cents: Cents },
	of: 'leftCents' | 'openCents',
): Entered {
	const found = find(account, invoice)
	if (found === undefined) return refuse('no such invoice')
	return unless(cents > found[of], of === 'leftCents' ? 'more than is left of the invoice' : 'more than is open')
}

function move(ledger: Ledger, entry: Moving, keepRest: boolean): Entered {
	const account = accountOf(ledger)
	switch (entry.is) {
		case 'invoice':
			return unless(hasNumber(ledger, entry), 'number given before')
		case 'credit note':
			return hasNumber(ledger, entry) ? refuse('number given before') : takeOff(account, entry, 'leftCents')
		case 'payment':
			return pay(account, entry.cents, entry.invoice, keepRest)
		case 'refund':
			return unless(entry.cents > account.creditCents, 'more than their credit')
		case 'write-off':
			return takeOff(account, entry, 'openCents')
		default:
			return entry satisfies never
	}
}

/** Whether `entry` may be written at the end of a client's ledger. The one place that decides. */
export function enter(ledger: Ledger, entry: Entry, { today, keepRest }: Entering): Entered {
	if (entry.on > today) return refuse('dated ahead')
	return entry.is === 'counter-entry' ? undo(ledger, entry) : move(ledger, entry, keepRest)
}
