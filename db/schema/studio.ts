import { sql } from 'drizzle-orm'
import { check, integer, sqliteTable, text, unique } from 'drizzle-orm/sqlite-core'
import type { LengthUnit } from '@/lib/format/length'
import { type Quarter, quarters } from '@/lib/season/season'
import { dayColumn, idColumn, momentColumn, oneOf } from './columns'
import { person } from './people'

/** One studio a file, so one row. */
export const studio = sqliteTable(
	'studio',
	{
		id: integer('id').primaryKey(),
		name: text('name').notNull(),
		timeZone: text('time_zone').notNull(),
		currency: text('currency').notNull(),
		lengths: text('lengths').$type<LengthUnit>().notNull(),
		/** Where and how to pay, as invoices say it. */
		payWords: text('pay_words').notNull().default(''),
		createdAt: momentColumn('created_at').notNull(),
	},
	(table) => [check('studio_one', sql`${table.id} = 1`), oneOf('studio_lengths', table.lengths, ['in', 'cm'])],
)

export const season = sqliteTable(
	'season',
	{
		id: idColumn<'season'>('id').primaryKey(),
		quarter: text('quarter').$type<Quarter>().notNull(),
		year: integer('year').notNull(),
		windowFrom: dayColumn('window_from').notNull(),
		windowTo: dayColumn('window_to').notNull(),
		answerBy: dayColumn('answer_by').notNull(),
	},
	(table) => [
		unique('season_once').on(table.quarter, table.year),
		oneOf('season_quarter', table.quarter, quarters),
		check('season_dates', sql`${table.answerBy} <= ${table.windowFrom} AND ${table.windowFrom} <= ${table.windowTo}`),
	],
)

/** Each change of the rates is a new version; a price names the one that made it. */
export const rates = sqliteTable('rates', {
	version: integer('version').primaryKey(),
	document: text('document').notNull(),
	madeAt: momentColumn('made_at').notNull(),
	madeBy: idColumn<'person'>('made_by').references(() => person.id),
})

/** The house designs of a season, to be applied to many clients: one document, as a draft is. */
export const collection = sqliteTable(
	'collection',
	{
		seasonId: idColumn<'season'>('season_id')
			.primaryKey()
			.references(() => season.id),
		version: integer('version').notNull(),
		document: text('document').notNull(),
		updatedAt: momentColumn('updated_at').notNull(),
		updatedBy: idColumn<'person'>('updated_by')
			.notNull()
			.references(() => person.id),
	},
	(table) => [check('collection_version', sql`${table.version} >= 1`)],
)
