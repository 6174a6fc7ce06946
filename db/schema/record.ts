import { sql } from 'drizzle-orm'
import { blob, check, index, integer, sqliteTable, text } from 'drizzle-orm/sqlite-core'
import type { Hash } from '@/lib/record/hash'
import { client } from './clients'
import { idColumn, momentColumn } from './columns'

/** Words that evidence is made of, kept apart so that they can be erased while the evidence stands. */
export const sealedText = sqliteTable(
	'sealed_text',
	{
		hash: text('hash').$type<Hash>().primaryKey(),
		clientId: idColumn<'client'>('client_id').references(() => client.id),
		salt: blob('salt', { mode: 'buffer' }).notNull(),
		body: text('body').notNull(),
	},
	(table) => [
		index('sealed_text_client').on(table.clientId),
		check('sealed_text_salt', sql`length(${table.salt}) = 16`),
	],
)

/** A line of the record. `facts` holds ids, hashes, enumerated facts and times, and never words. */
export const event = sqliteTable(
	'event',
	{
		seq: integer('seq').primaryKey(),
		hash: text('hash').$type<Hash>().notNull().unique(),
		prev: text('prev').$type<Hash>().notNull().unique(),
		at: momentColumn('at').notNull(),
		actor: text('actor').notNull(),
		act: text('act').notNull(),
		object: text('object').notNull(),
		clientId: idColumn<'client'>('client_id').references(() => client.id),
		facts: text('facts').notNull(),
		sealed: text('sealed').$type<Hash>(),
	},
	(table) => [index('event_client').on(table.clientId, table.seq), index('event_object').on(table.object, table.seq)],
)

/** That a client's words were erased; while it stands, their sealed text may go. */
export const erasure = sqliteTable(
	'erasure',
	{
		id: idColumn<'erasure'>('id').primaryKey(),
		clientId: idColumn<'client'>('client_id')
			.notNull()
			.references(() => client.id),
		at: momentColumn('at').notNull(),
		by: idColumn<'person'>('by').notNull(),
	},
	(table) => [index('erasure_client').on(table.clientId)],
)
