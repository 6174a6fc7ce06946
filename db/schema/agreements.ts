import { sql } from 'drizzle-orm'
import { check, index, integer, sqliteTable, text, unique } from 'drizzle-orm/sqlite-core'
import { type KeptState, kept } from '@/lib/agreement/state'
import type { Hash } from '@/lib/record/hash'
import type { Cents } from '@/lib/units/cents'
import { client } from './clients'
import { dayColumn, idColumn, momentColumn, oneOf } from './columns'
import { person } from './people'

/** The studio's clauses; each change is a new version. Before the first change the house's own stand as version 1. */
export const agreementTemplate = sqliteTable(
	'agreement_template',
	{
		version: integer('version').primaryKey(),
		document: text('document').notNull(),
		madeAt: momentColumn('made_at').notNull(),
		madeBy: idColumn<'person'>('made_by')
			.notNull()
			.references(() => person.id),
	},
	(table) => [check('agreement_template_version', sql`${table.version} >= 1`)],
)

/**
 * Where one client's agreement stands. `issued` is the document that was issued last, `inForce` the one that both have
 * signed; what stands beside them follows from those, written with them, so that a list reads one row an agreement.
 */
export const agreement = sqliteTable(
	'agreement',
	{
		id: idColumn<'agreement'>('id').primaryKey(),
		clientId: idColumn<'client'>('client_id')
			.notNull()
			.references(() => client.id),
		/** The one that this renews. */
		renews: idColumn<'agreement'>('renews').unique(),
		state: text('state').$type<KeptState>().notNull(),
		number: integer('number').notNull(),
		issued: text('issued').$type<Hash>(),
		inForce: text('in_force').$type<Hash>(),
		/** Of the document issued last. */
		from: dayColumn('from_day'),
		to: dayColumn('to_day'),
		totalCents: integer('total_cents').$type<Cents>(),
		signBy: dayColumn('sign_by'),
		issuedAt: momentColumn('issued_at'),
		seenAt: momentColumn('seen_at'),
		remindedAt: momentColumn('reminded_at'),
		answeredAt: momentColumn('answered_at'),
		undeliveredAt: momentColumn('undelivered_at'),
		/** The last day of the one in force: its own, or the day on which it was ended early. */
		holdsUntil: dayColumn('holds_until'),
		/** Why and by whom it was ended, sealed. */
		ending: text('ending').$type<Hash>(),
		createdAt: momentColumn('created_at').notNull(),
	},
	(table) => [
		index('agreement_client').on(table.clientId),
		index('agreement_state').on(table.state, table.signBy),
		oneOf('agreement_kept', table.state, kept),
		check('agreement_issued', sql`(${table.number} = 0) = (${table.issued} IS NULL)`),
		check('agreement_unissued', sql`${table.number} > 0 OR ${table.state} = 'drafting'`),
		check('agreement_in_force', sql`(${table.inForce} IS NULL) = (${table.holdsUntil} IS NULL)`),
		check('agreement_signed', sql`${table.state} <> 'signed' OR ${table.inForce} IS NOT NULL`),
		check('agreement_sign_by', sql`(${table.issued} IS NULL) = (${table.signBy} IS NULL)`),
	],
)

/** What is being agreed with a client before it is issued, kept at every save. */
export const agreementDraft = sqliteTable(
	'agreement_draft',
	{
		agreementId: idColumn<'agreement'>('agreement_id')
			.primaryKey()
			.references(() => agreement.id),
		version: integer('version').notNull(),
		terms: text('terms').notNull(),
		updatedAt: momentColumn('updated_at').notNull(),
		updatedBy: idColumn<'person'>('updated_by')
			.notNull()
			.references(() => person.id),
	},
	(table) => [check('agreement_draft_version', sql`${table.version} >= 1`)],
)

/** What was issued, never altered. Its text lies sealed under `hash`, which a signature has to name. */
export const agreementDocument = sqliteTable(
	'agreement_document',
	{
		hash: text('hash').$type<Hash>().primaryKey(),
		agreementId: idColumn<'agreement'>('agreement_id')
			.notNull()
			.references(() => agreement.id),
		number: integer('number').notNull(),
		supersedes: text('supersedes').$type<Hash>(),
		templateVersion: integer('template_version').notNull(),
		from: dayColumn('from_day').notNull(),
		to: dayColumn('to_day').notNull(),
		totalCents: integer('total_cents').$type<Cents>().notNull(),
		issuedAt: momentColumn('issued_at').notNull(),
		issuedBy: idColumn<'person'>('issued_by')
			.notNull()
			.references(() => person.id),
	},
	(table) => [
		unique('agreement_document_number').on(table.agreementId, table.number),
		check('agreement_document_from_one', sql`${table.number} >= 1`),
		check('agreement_document_first', sql`(${table.number} = 1) = (${table.supersedes} IS NULL)`),
		check('agreement_document_days', sql`${table.from} <= ${table.to}`),
	],
)

const openedAs = ['page', 'PDF'] as const

/** That a document was opened by somebody who may sign it, each way once: agreeing to electronic records rests on it. */
export const agreementOpening = sqliteTable(
	'agreement_opening',
	{
		id: idColumn<'opening'>('id').primaryKey(),
		document: text('document')
			.$type<Hash>()
			.notNull()
			.references(() => agreementDocument.hash),
		personId: idColumn<'person'>('person_id')
			.notNull()
			.references(() => person.id),
		as: text('opened_as').$type<(typeof openedAs)[number]>().notNull(),
		at: momentColumn('at').notNull(),
	},
	(table) => [
		unique('agreement_opening_once').on(table.document, table.personId, table.as),
		oneOf('agreement_opening_as', table.as, openedAs),
	],
)

/** That somebody agreed to electronic records for one document; `words` seals what they were shown. */
export const agreementConsent = sqliteTable(
	'agreement_consent',
	{
		id: idColumn<'consent'>('id').primaryKey(),
		document: text('document')
			.$type<Hash>()
			.notNull()
			.references(() => agreementDocument.hash),
		personId: idColumn<'person'>('person_id')
			.notNull()
			.references(() => person.id),
		version: integer('version').notNull(),
		words: text('words').$type<Hash>().notNull(),
		at: momentColumn('at').notNull(),
	},
	(table) => [unique('agreement_consent_once').on(table.document, table.personId)],
)

const sides = ['studio', 'client'] as const

/** One signature of each side to a document; what is kept of it (`lib/agreement/signing/signature.ts`) lies sealed. */
export const agreementSignature = sqliteTable(
	'agreement_signature',
	{
		id: idColumn<'signature'>('id').primaryKey(),
		document: text('document')
			.$type<Hash>()
			.notNull()
			.references(() => agreementDocument.hash),
		side: text('side').$type<(typeof sides)[number]>().notNull(),
		words: text('words').$type<Hash>().notNull(),
		by: idColumn<'person'>('by')
			.notNull()
			.references(() => person.id),
		at: momentColumn('at').notNull(),
	},
	(table) => [
		unique('agreement_signature_side').on(table.document, table.side),
		oneOf('agreement_signature_sides', table.side, sides),
	],
)

/** The sealed PDF of a document that both have signed, kept as a file: made once and never again. */
export const agreementPaper = sqliteTable(
	'agreement_paper',
	{
		document: text('document')
			.$type<Hash>()
			.primaryKey()
			.references(() => agreementDocument.hash),
		/** SHA-256 of the file. */
		sha256: text('sha256').$type<Hash>().notNull().unique(),
		bytes: integer('bytes').notNull(),
		/** The line of the record that stood last when both had signed, as it is printed in the PDF. */
		headSeq: integer('head_seq').notNull(),
		head: text('head').$type<Hash>().notNull(),
		at: momentColumn('at').notNull(),
	},
	(table) => [check('agreement_paper_bytes', sql`${table.bytes} > 0`)],
)
