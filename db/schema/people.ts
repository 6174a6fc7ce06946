import { index, integer, primaryKey, sqliteTable, text, unique } from 'drizzle-orm/sqlite-core'
import type { PersonId } from '@/lib/units/id'
import { idColumn, momentColumn, oneOf } from './columns'

/** Whoever can sign in, known by a mail address in lower case. The session adapter wants these names, `image` too. */
export const person = sqliteTable('person', {
	id: text('id').$type<PersonId>().primaryKey(),
	name: text('name').notNull(),
	email: text('email').notNull().unique(),
	emailVerified: integer('email_verified', { mode: 'timestamp_ms' }),
	image: text('image'),
	/** Stands for the person in the links of mails: it lets a link be asked for with one tap, and nothing else. */
	handle: text('handle').notNull().unique(),
	createdAt: momentColumn('created_at').notNull(),
})

export const staff = sqliteTable(
	'staff',
	{
		personId: idColumn<'person'>('person_id')
			.primaryKey()
			.references(() => person.id),
		role: text('role').$type<'designer' | 'helper'>().notNull(),
		since: momentColumn('since').notNull(),
		endedAt: momentColumn('ended_at'),
	},
	(table) => [oneOf('staff_role', table.role, ['designer', 'helper'])],
)

/** `sessionToken` is the SHA-256 of what the cookie holds; `expires` is the absolute end. */
export const session = sqliteTable(
	'session',
	{
		sessionToken: text('session_token').primaryKey(),
		userId: text('user_id')
			.$type<PersonId>()
			.notNull()
			.references(() => person.id),
		expires: integer('expires', { mode: 'timestamp_ms' }).notNull(),
		createdAt: momentColumn('created_at').notNull(),
		/** What the person would call the device: "Firefox on Android". */
		device: text('device').notNull().default(''),
		/** How the mailbox was proven when it began; null of one from before that was kept. */
		provenBy: text('proven_by').$type<'link' | 'code'>(),
	},
	(table) => [
		index('session_of_person').on(table.userId),
		index('session_expires').on(table.expires),
		oneOf('session_proven', table.provenBy, ['link', 'code']),
	],
)

/**
 * A link and a code that were mailed: hashes only. One row a person and browser that asked, the newest; used or out of
 * tries, it goes.
 */
export const signInToken = sqliteTable(
	'sign_in_token',
	{
		token: text('token').primaryKey(),
		/** The address that it was mailed to. */
		identifier: text('identifier').notNull(),
		codeHash: text('code_hash').notNull(),
		/** Of the cookie of the browser that asked. */
		askHash: text('ask_hash').notNull(),
		triesLeft: integer('tries_left').notNull(),
		expires: integer('expires', { mode: 'timestamp_ms' }).notNull(),
	},
	(table) => [unique('sign_in_token_asked').on(table.identifier, table.askHash)],
)

/** The one-time link that makes an empty studio somebody's. */
export const setUp = sqliteTable('set_up', {
	id: integer('id').primaryKey(),
	tokenHash: text('token_hash').notNull(),
	madeAt: momentColumn('made_at').notNull(),
})

/** Browsers that a person has signed in with, each known by the hash of a cookie of its own. */
export const knownDevice = sqliteTable(
	'known_device',
	{
		personId: idColumn<'person'>('person_id')
			.notNull()
			.references(() => person.id),
		hash: text('hash').notNull(),
		words: text('words').notNull(),
		firstAt: momentColumn('first_at').notNull(),
	},
	(table) => [primaryKey({ columns: [table.personId, table.hash] })],
)
