import { asc, eq, inArray } from 'drizzle-orm'
import { z } from 'zod'
import { type Entry, entrySchema, type Ledger } from '@/lib/money/ledger/entry'
import type { Hash } from '@/lib/record/hash'
import type { ClientId } from '@/lib/units/id'
import type { Reading } from '../open'
import { unseal } from '../record/seal'
import { entry, invoice } from '../schema'

type Row = { readonly entry: typeof entry.$inferSelect; readonly dueOn: string | null }

/** What was typed beside an entry; of an erased client nothing is left of it. */
export const entryWords = z.strictObject({ reference: z.string().optional(), reason: z.string().optional() })
const erased = 'erased'

function wordsOf(db: Reading, hash: Hash | null) {
	const said = hash === null ? {} : (entryWords.safeParse(unseal(db, hash)).data ?? {})
	return { reference: said.reference ?? '', reason: said.reason ?? erased }
}

/** Fields that a kind of entry does not have are not there, as the core wants it. */
function entryOf(db: Reading, { entry: row, dueOn }: Row): Entry {
	const { id, is, on, cents, invoice: of, means } = row
	const { reference, reason } = wordsOf(db, row.words)
	const fields = {
		invoice: { number: of, dueOn, cents },
		'credit note': { number: row.creditNote, invoice: of, cents },
		payment: { means, reference, cents, invoice: of },
		refund: { means, reference, cents },
		'write-off': { invoice: of, reason, cents },
		'counter-entry': { of: row.undoes, reason },
	}[is]
	return entrySchema.parse({ is, id, on, ...fields })
}

const rows = (db: Reading) =>
	db
		.select({ entry, dueOn: invoice.dueOn })
		.from(entry)
		.leftJoin(invoice, eq(invoice.number, entry.invoice))
		.orderBy(asc(entry.seq))

/** A client's entries in the order in which they were written. */
export const ledgerOf = (db: Reading, of: ClientId): Ledger =>
	rows(db)
		.where(eq(entry.clientId, of))
		.all()
		.map((row) => entryOf(db, row))

/** Those of several at once. */
export function ledgersOf(db: Reading, of: readonly ClientId[]): ReadonlyMap<ClientId, Ledger> {
	const all = new Map<ClientId, Entry[]>(of.map((client) => [client, []]))
	for (const row of rows(db)
		.where(inArray(entry.clientId, [...of]))
		.all())
		all.get(row.entry.clientId)?.push(entryOf(db, row))
	return all
}
