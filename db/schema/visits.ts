import { sql } from 'drizzle-orm'
import { check, index, integer, sqliteTable, text } from 'drizzle-orm/sqlite-core'
import { photoSides, visitKinds, visitStates } from '@/lib/visit/visit'
import { client, place } from './clients'
import { between, dayColumn, idColumn, momentColumn, oneOf } from './columns'
import { person } from './people'
import { proposal } from './proposals'
import { season } from './studio'

/** A visit to a client: one that is to be planned (as when they say that something is wrong), is planned, was made, or fell away. */
export const visit = sqliteTable(
	'visit',
	{
		id: idColumn<'visit'>('id').primaryKey(),
		clientId: idColumn<'client'>('client_id')
			.notNull()
			.references(() => client.id),
		seasonId: idColumn<'season'>('season_id')
			.notNull()
			.references(() => season.id),
		/** The design that it is about; null where the season has none. */
		proposalId: idColumn<'proposal'>('proposal_id').references(() => proposal.id),
		/** Null for all of the client's places. */
		placeId: idColumn<'place'>('place_id').references(() => place.id),
		kind: text('kind').$type<(typeof visitKinds)[number]>().notNull(),
		state: text('state').$type<(typeof visitStates)[number]>().notNull(),
		day: dayColumn('day'),
		/** Who came, in words. */
		came: text('came').notNull(),
		clientNote: text('client_note').notNull(),
		studioNote: text('studio_note').notNull(),
		/** What a contact said is wrong, and when; null for a visit of the studio's own making. */
		reportedBy: idColumn<'person'>('reported_by').references(() => person.id),
		reportedAt: momentColumn('reported_at'),
		reported: text('reported').notNull(),
		createdAt: momentColumn('created_at').notNull(),
		doneAt: momentColumn('done_at'),
	},
	(table) => [
		index('visit_client').on(table.clientId, table.day),
		index('visit_season').on(table.seasonId, table.state),
		oneOf('visit_kind', table.kind, visitKinds),
		oneOf('visit_state', table.state, visitStates),
		check('visit_day', sql`${table.state} NOT IN ('planned', 'done') OR ${table.day} IS NOT NULL`),
		check('visit_done', sql`(${table.state} = 'done') = (${table.doneAt} IS NOT NULL)`),
		check('visit_reported', sql`(${table.reportedBy} IS NULL) = (${table.reportedAt} IS NULL)`),
	],
)

/** A photo of a visit, of what is wrong, or of a place's front; the picture itself is a file of its own. */
export const photo = sqliteTable(
	'photo',
	{
		id: idColumn<'photo'>('id').primaryKey(),
		clientId: idColumn<'client'>('client_id')
			.notNull()
			.references(() => client.id),
		visitId: idColumn<'visit'>('visit_id').references(() => visit.id),
		placeId: idColumn<'place'>('place_id').references(() => place.id),
		side: text('side').$type<(typeof photoSides)[number]>().notNull(),
		width: integer('width').notNull(),
		height: integer('height').notNull(),
		/** Of the larger file, so that the same photo twice is one. */
		sha256: text('sha256').notNull(),
		position: integer('position').notNull(),
		addedAt: momentColumn('added_at').notNull(),
		addedBy: idColumn<'person'>('added_by')
			.notNull()
			.references(() => person.id),
	},
	(table) => [
		index('photo_visit').on(table.visitId),
		index('photo_place').on(table.placeId),
		index('photo_client').on(table.clientId),
		oneOf('photo_side', table.side, photoSides),
		check('photo_of', sql`(${table.visitId} IS NULL) <> (${table.placeId} IS NULL)`),
		check('photo_front', sql`(${table.side} = 'front') = (${table.placeId} IS NOT NULL)`),
		between('photo_width', table.width, 1, 20_000),
		between('photo_height', table.height, 1, 20_000),
	],
)
