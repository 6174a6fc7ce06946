import { eq } from 'drizzle-orm'
import type { Viewer } from '@/lib/access/viewer'
import { type LateInvoice, lateList } from '@/lib/money/late/late-list'
import { type Account, accountOf } from '@/lib/money/ledger/account'
import type { Entry, EntryId } from '@/lib/money/ledger/entry'
import { dayOf } from '@/lib/units/day'
import type { ClientId, PersonId } from '@/lib/units/id'
import { ledgerOf } from '../money/ledger'
import { type InvoicePage, readInvoice } from '../money/read-invoice'
import { read } from '../open'
import { client, entry, studio } from '../schema'
import type { Stamp } from '../stamp'
import { denied, viewerOf } from '../viewer'

/** The invoice that a mail sends; undefined once its words are erased or its reader may not see it any more. */
export async function mailedInvoice(
	viewer: Viewer,
	{ invoice, person }: { readonly invoice: string; readonly person: PersonId },
): Promise<InvoicePage | undefined> {
	if (denied(viewer, 'send mail', null) !== null) return undefined
	const found = await readInvoice(await viewerOf(person), invoice)
	return found.ok ? found : undefined
}

/** The payment that a mail reports, and where its client stands now. */
export type MailedPayment = {
	readonly client: ClientId
	readonly currency: string
	readonly payment: Extract<Entry, { is: 'payment' }>
	readonly account: Account
}

export async function mailedPayment(
	viewer: Viewer,
	{ entry: id, person }: { readonly entry: EntryId; readonly person: PersonId },
): Promise<MailedPayment | undefined> {
	if (denied(viewer, 'send mail', null) !== null) return undefined
	const reader = await viewerOf(person)
	return read((db) => {
		const [row] = db
			.select({ client: entry.clientId, currency: studio.currency })
			.from(entry)
			.innerJoin(studio, eq(studio.id, 1))
			.where(eq(entry.id, id))
			.all()
		if (row === undefined || denied(reader, 'see the account', row.client) !== null) return undefined
		const ledger = ledgerOf(db, row.client)
		const payment = ledger.find((each) => each.id === id)
		return payment?.is === 'payment' ? { ...row, payment, account: accountOf(ledger) } : undefined
	})
}

/** What a reminder asks for: all that is late when it is sent, which may be nothing any more. */
export type MailedLate = {
	readonly client: ClientId
	readonly currency: string
	readonly payWords: string
	readonly late: readonly LateInvoice[]
}

export async function mailedLate(
	viewer: Viewer,
	{ account: of, person }: { readonly account: ClientId; readonly person: PersonId },
	{ at }: Pick<Stamp, 'at'>,
): Promise<MailedLate | undefined> {
	if (denied(viewer, 'send mail', null) !== null) return undefined
	const reader = await viewerOf(person)
	if (denied(reader, 'see the account', of) !== null) return undefined
	return read((db) => {
		const [house] = db
			.select({ studio })
			.from(client)
			.innerJoin(studio, eq(studio.id, 1))
			.where(eq(client.id, of))
			.all()
		if (house === undefined) return undefined
		const { currency, payWords, timeZone } = house.studio
		const list = lateList([{ client: of, account: accountOf(ledgerOf(db, of)) }], dayOf(at, timeZone))
		return { client: of, currency, payWords, late: list.clients.flatMap(({ invoices }) => invoices) }
	})
}
