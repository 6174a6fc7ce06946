import { integer, sqliteTable, text } from 'drizzle-orm/sqlite-core'

/** The adapter's type asks for a table of accounts at other services. There are none here: it is never made nor read. */
export const noAccounts = sqliteTable('account', {
	userId: text('user_id').notNull(),
	type: text('type').notNull(),
	provider: text('provider').notNull(),
	providerAccountId: text('provider_account_id').notNull(),
	refresh_token: text('refresh_token'),
	access_token: text('access_token'),
	expires_at: integer('expires_at'),
	token_type: text('token_type'),
	scope: text('scope'),
	id_token: text('id_token'),
	session_state: text('session_state'),
})
