import { sql } from 'drizzle-orm'
import { check, index, integer, sqliteTable, text } from 'drizzle-orm/sqlite-core'
import type { CreditNumber, InvoiceNumber } from '@/lib/money/invoice/number'
import { means } from '@/lib/money/ledger/entry'
import type { Hash } from '@/lib/record/hash'
import type { Cents } from '@/lib/units/cents'
import type { Id } from '@/lib/units/id'
import { client } from './clients'
import { dayColumn, idColumn, momentColumn, oneOf } from './columns'
import { person } from './people'

/**
 * An invoice as it was sent, never altered; its text lies sealed. `bill` is what it asks for: of several the later ones
 * take the place of one that was credited.
 */
export const invoice = sqliteTable(
	'invoice',
	{
		number: text('number').$type<InvoiceNumber>().primaryKey(),
		clientId: idColumn<'client'>('client_id')
			.notNull()
			.references(() => client.id),
		bill: text('bill'),
		on: dayColumn('on_day').notNull(),
		dueOn: dayColumn('due_on').notNull(),
		totalCents: integer('total_cents').$type<Cents>().notNull(),
		words: text('words').$type<Hash>().notNull(),
		at: momentColumn('at').notNull(),
		by: idColumn<'person'>('by').references(() => person.id),
	},
	(table) => [
		index('invoice_client').on(table.clientId, table.on),
		index('invoice_bill').on(table.bill),
		check('invoice_total', sql`${table.totalCents} > 0`),
		check('invoice_days', sql`${table.on} <= ${table.dueOn}`),
	],
)

/** What is kept of an invoice beside its text, and may change: mails that ask for it. */
export const invoiceAsked = sqliteTable('invoice_asked', {
	number: text('number')
		.$type<InvoiceNumber>()
		.primaryKey()
		.references(() => invoice.number),
	remindedAt: momentColumn('reminded_at'),
	undeliveredAt: momentColumn('undelivered_at'),
})

/** Takes off an invoice what it should not have asked for; never altered, its text sealed. */
export const creditNote = sqliteTable(
	'credit_note',
	{
		number: text('number').$type<CreditNumber>().primaryKey(),
		invoice: text('invoice')
			.$type<InvoiceNumber>()
			.notNull()
			.references(() => invoice.number),
		clientId: idColumn<'client'>('client_id')
			.notNull()
			.references(() => client.id),
		on: dayColumn('on_day').notNull(),
		totalCents: integer('total_cents').$type<Cents>().notNull(),
		words: text('words').$type<Hash>().notNull(),
		at: momentColumn('at').notNull(),
		by: idColumn<'person'>('by').references(() => person.id),
	},
	(table) => [index('credit_note_invoice').on(table.invoice), check('credit_note_total', sql`${table.totalCents} > 0`)],
)

const kinds = ['invoice', 'credit note', 'payment', 'refund', 'write-off', 'counter-entry'] as const

/**
 * A line of a client's account, in the order of `seq`: none is altered or taken away, a mistake is undone by a
 * counter-entry. What was typed beside it, a reference or a reason, lies sealed.
 */
export const entry = sqliteTable(
	'entry',
	{
		seq: integer('seq').primaryKey(),
		id: idColumn<'entry'>('id').notNull().unique(),
		clientId: idColumn<'client'>('client_id')
			.notNull()
			.references(() => client.id),
		is: text('is_a').$type<(typeof kinds)[number]>().notNull(),
		on: dayColumn('on_day').notNull(),
		/** Always above zero; of a counter-entry, that of the entry that it undoes. */
		cents: integer('cents').$type<Cents>().notNull(),
		/** The invoice itself, the one that a credit note or a write-off takes off, or the one that a payment names. */
		invoice: text('invoice')
			.$type<InvoiceNumber>()
			.references(() => invoice.number),
		creditNote: text('credit_note')
			.$type<CreditNumber>()
			.unique()
			.references(() => creditNote.number),
		means: text('means').$type<(typeof means)[number]>(),
		undoes: text('undoes').$type<Id<'entry'>>().unique(),
		words: text('words').$type<Hash>(),
		at: momentColumn('at').notNull(),
		by: idColumn<'person'>('by').references(() => person.id),
	},
	(table) => [
		index('entry_client').on(table.clientId, table.on),
		oneOf('entry_is', table.is, kinds),
		oneOf('entry_means', table.means, means),
		check('entry_cents', sql`${table.cents} > 0`),
		check('entry_paid', sql`(${table.is} IN ('payment', 'refund')) = (${table.means} IS NOT NULL)`),
		check('entry_undoes', sql`(${table.is} = 'counter-entry') = (${table.undoes} IS NOT NULL)`),
		check('entry_credit', sql`(${table.is} = 'credit note') = (${table.creditNote} IS NOT NULL)`),
		check(
			'entry_invoice',
			sql`${table.is} NOT IN ('invoice', 'credit note', 'write-off') OR ${table.invoice} IS NOT NULL`,
		),
	],
)
