import { sql } from 'drizzle-orm'
import { check, index, integer, primaryKey, sqliteTable, text, unique } from 'drizzle-orm/sqlite-core'
import { type KeptState, kept } from '@/lib/proposal/state'
import type { Hash } from '@/lib/record/hash'
import type { Cents } from '@/lib/units/cents'
import { material } from './catalogue'
import { client } from './clients'
import { dayColumn, idColumn, momentColumn, oneOf } from './columns'
import { person } from './people'
import { rates, season } from './studio'

/**
 * Where one client's proposal for one season stands. The columns from `revisionHash` on follow from the revision
 * and the answer that stand, written with them, so that the season page reads one row a client.
 */
export const proposal = sqliteTable(
	'proposal',
	{
		id: idColumn<'proposal'>('id').primaryKey(),
		clientId: idColumn<'client'>('client_id')
			.notNull()
			.references(() => client.id),
		seasonId: idColumn<'season'>('season_id')
			.notNull()
			.references(() => season.id),
		state: text('state').$type<KeptState>().notNull(),
		revisionNumber: integer('revision_number').notNull(),
		revisionHash: text('revision_hash').$type<Hash>(),
		answerBy: dayColumn('answer_by'),
		publishedAt: momentColumn('published_at'),
		seenAt: momentColumn('seen_at'),
		remindedAt: momentColumn('reminded_at'),
		answeredAt: momentColumn('answered_at'),
		lapseNotedAt: momentColumn('lapse_noted_at'),
		/** When the mail that asks for this answer was given up. */
		undeliveredAt: momentColumn('undelivered_at'),
		/** The name of the palette when it is the only one or the chosen one; else how many there are. */
		palette: text('palette').notNull(),
		paletteCount: integer('palette_count').notNull(),
		/** Its colours, for the row's thumbnail: "#b5653a #6d3049". */
		paletteHexes: text('palette_hexes').notNull(),
		/** Before tax. */
		valueCents: integer('value_cents').$type<Cents>(),
		/** Tenths of a per cent. */
		marginTenths: integer('margin_tenths'),
		/** What remains due of one that was cancelled after its approval, tax included. */
		remainsCents: integer('remains_cents').$type<Cents>(),
		/** What the address of its cover ends in: 16 random bytes that lead to nothing else. */
		cardKey: text('card_key').unique(),
		createdAt: momentColumn('created_at').notNull(),
	},
	(table) => [
		unique('proposal_once').on(table.clientId, table.seasonId),
		index('proposal_season').on(table.seasonId, table.state, table.answerBy),
		oneOf('proposal_state', table.state, kept),
		check('proposal_published', sql`(${table.revisionNumber} = 0) = (${table.revisionHash} IS NULL)`),
		check('proposal_remains', sql`${table.remainsCents} IS NULL OR ${table.remainsCents} >= 0`),
		check('proposal_unpublished', sql`${table.revisionNumber} > 0 OR ${table.state} = 'drafting'`),
	],
)

export const draft = sqliteTable(
	'draft',
	{
		proposalId: idColumn<'proposal'>('proposal_id')
			.primaryKey()
			.references(() => proposal.id),
		version: integer('version').notNull(),
		document: text('document').notNull(),
		updatedAt: momentColumn('updated_at').notNull(),
		updatedBy: idColumn<'person'>('updated_by')
			.notNull()
			.references(() => person.id),
	},
	(table) => [check('draft_version', sql`${table.version} >= 1`)],
)

/** Which materials a draft names, kept with every save: so that it is known who else uses one. */
export const draftMaterial = sqliteTable(
	'draft_material',
	{
		proposalId: idColumn<'proposal'>('proposal_id')
			.notNull()
			.references(() => proposal.id),
		materialId: idColumn<'material'>('material_id')
			.notNull()
			.references(() => material.id),
	},
	(table) => [
		primaryKey({ columns: [table.proposalId, table.materialId] }),
		index('draft_material_of').on(table.materialId, table.proposalId),
	],
)

/** What was published, never altered. Its words lie sealed: `offer` is the client's side, `costing` the studio's. */
export const revision = sqliteTable(
	'revision',
	{
		id: idColumn<'revision'>('id').primaryKey(),
		proposalId: idColumn<'proposal'>('proposal_id')
			.notNull()
			.references(() => proposal.id),
		number: integer('number').notNull(),
		hash: text('hash').$type<Hash>().notNull().unique(),
		offerHash: text('offer_hash').$type<Hash>().notNull(),
		costingHash: text('costing_hash').$type<Hash>().notNull(),
		ratesVersion: integer('rates_version')
			.notNull()
			.references(() => rates.version),
		answerBy: dayColumn('answer_by').notNull(),
		publishedAt: momentColumn('published_at').notNull(),
		publishedBy: idColumn<'person'>('published_by')
			.notNull()
			.references(() => person.id),
	},
	(table) => [
		unique('revision_number').on(table.proposalId, table.number),
		check('revision_from_one', sql`${table.number} >= 1`),
	],
)

/** One answer to one revision; the words of it lie sealed. */
export const answer = sqliteTable(
	'answer',
	{
		id: idColumn<'answer'>('id').primaryKey(),
		reference: text('reference').notNull().unique(),
		revisionId: idColumn<'revision'>('revision_id')
			.notNull()
			.unique()
			.references(() => revision.id),
		revisionHash: text('revision_hash').$type<Hash>().notNull(),
		kind: text('kind').$type<'approval' | 'change asked for' | 'skip'>().notNull(),
		option: text('option'),
		/** Places that take another option than `option`: {"<place>":"<key>"}, in the order of their ids. */
		places: text('places').notNull().default('{}'),
		extras: text('extras').notNull(),
		leftOut: text('left_out').notNull(),
		totalCents: integer('total_cents').$type<Cents>(),
		wordsHash: text('words_hash').$type<Hash>(),
		by: idColumn<'person'>('by')
			.notNull()
			.references(() => person.id),
		word: text('word').$type<'client' | 'studio'>().notNull(),
		at: momentColumn('at').notNull(),
	},
	(table) => [
		oneOf('answer_kind', table.kind, ['approval', 'change asked for', 'skip']),
		oneOf('answer_word', table.word, ['client', 'studio']),
		check(
			'answer_approval',
			sql`(${table.kind} = 'approval') = (${table.option} IS NOT NULL AND ${table.totalCents} IS NOT NULL)`,
		),
	],
)
