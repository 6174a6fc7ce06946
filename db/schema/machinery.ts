import { sql } from 'drizzle-orm'
import { check, index, integer, sqliteTable, text } from 'drizzle-orm/sqlite-core'
import { idColumn, momentColumn, oneOf } from './columns'
import { person } from './people'

export const messages = [
	'sign-in link',
	'proposal published',
	'reminder',
	'change asked for',
	'skipped',
	'approved',
	'approval received',
	'opened again',
	'taken back',
	'cancelled',
	'something is wrong',
	'visit made',
	'new device',
	'address changed',
	'agreement issued',
	'agreement reminder',
	'agreement signed',
	'agreement declined',
	'agreement taken back',
	'agreement ended',
	'invoice sent',
	'payment reminder',
	'payment received',
] as const
export type Message = (typeof messages)[number]

/** A mail to be sent: which message and its facts, written with what it reports. Rendered when it is sent. */
export const outbox = sqliteTable(
	'outbox',
	{
		id: idColumn<'mail'>('id').primaryKey(),
		message: text('message').$type<Message>().notNull(),
		/** Null for a link asked for by an address that nobody here has: nothing is sent. */
		personId: idColumn<'person'>('person_id').references(() => person.id),
		facts: text('facts').notNull(),
		createdAt: momentColumn('created_at').notNull(),
		leasedUntil: momentColumn('leased_until'),
		notBefore: momentColumn('not_before').notNull(),
		tries: integer('tries').notNull(),
		sentAt: momentColumn('sent_at'),
		droppedAt: momentColumn('dropped_at'),
	},
	(table) => [
		index('outbox_due').on(table.notBefore).where(sql`${table.sentAt} IS NULL AND ${table.droppedAt} IS NULL`),
		oneOf('outbox_message', table.message, messages),
		check('outbox_one_end', sql`${table.sentAt} IS NULL OR ${table.droppedAt} IS NULL`),
	],
)

/** Each form goes through once; what it did is remembered by the key that it carried. */
export const once = sqliteTable(
	'once',
	{
		key: idColumn<'once'>('key').primaryKey(),
		actor: text('actor').notNull(),
		at: momentColumn('at').notNull(),
	},
	(table) => [index('once_at').on(table.at)],
)
