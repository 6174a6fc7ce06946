import type { Viewer } from '@/lib/access/viewer'
import type { LengthUnit } from '@/lib/format/length'
import type { Bill } from '@/lib/money/bills/bill'
import type { InvoiceNumber } from '@/lib/money/invoice/number'
import { type Account, accountOf } from '@/lib/money/ledger/account'
import type { Ledger } from '@/lib/money/ledger/entry'
import { yearsOf } from '@/lib/money/statement/year'
import type { Day } from '@/lib/units/day'
import type { ClientId } from '@/lib/units/id'
import { type Reading, read } from '../open'
import type { Stamp } from '../stamp'
import type { Denied } from '../viewer'
import { billingOf } from './bills/bills'
import { type FoundAccount, findAccount } from './find'
import { ledgerOf } from './ledger'

/** A bill as the account shows it: what it is for, and the invoices that asked for it. */
export type AccountBill = {
	readonly bill: Bill
	readonly about: string
	readonly invoices: readonly InvoiceNumber[]
	/** Its day has come, and nobody was asked for it yet. */
	readonly isWanting: boolean
}

export type AccountPage = {
	readonly ok: true
	readonly client: { readonly id: ClientId; readonly name: string }
	readonly studio: string
	readonly currency: string
	readonly payWords: string
	/** How the studio measures. */
	readonly lengths: LengthUnit
	readonly today: Day
	readonly account: Account
	readonly ledger: Ledger
	/** Those with a statement, the latest first. */
	readonly years: readonly number[]
	readonly bills: readonly AccountBill[]
}

const dayOfBill = ({ bill }: AccountBill) => bill.dated?.on ?? '9999'

/** Every bill as it stands, in the order of the days; what has no day yet stands last. */
export function accountBills(db: Reading, found: FoundAccount): AccountBill[] {
	const { bills, issued, invoices } = billingOf(db, found)
	return bills
		.map(({ bill, telling }) => ({
			bill,
			about: telling.about,
			invoices: issued.filter(({ key }) => key === bill.key).map(({ number }) => number),
			isWanting: invoices.some(({ key }) => key === bill.key),
		}))
		.toSorted((a, b) => dayOfBill(a).localeCompare(dayOfBill(b)))
}

/** Where a client stands, for whoever may see their money. */
export async function readAccount(
	viewer: Viewer,
	of: ClientId,
	stamp: Pick<Stamp, 'at'>,
): Promise<AccountPage | Denied> {
	return read((db) => {
		const found = findAccount(db, viewer, 'see the account', of, stamp)
		if (!found.ok) return found
		const { client, studio, today } = found
		const ledger = ledgerOf(db, of)
		const days = ledger.map(({ on }) => on)
		return {
			...{ ok: true, today, ledger, account: accountOf(ledger) },
			client: { id: client.id, name: client.name },
			...{ studio: studio.name, currency: studio.currency, payWords: studio.payWords, lengths: studio.lengths },
			years: yearsOf(days, today).toReversed(),
			bills: accountBills(db, found),
		}
	})
}
