import { sql } from 'drizzle-orm'
import { check, index, integer, real, sqliteTable, text, unique } from 'drizzle-orm/sqlite-core'
import * as card from '@/lib/container/card'
import type { WallKind } from '@/lib/container/site'
import { wallKinds } from '@/lib/container/site'
import { between, dayColumn, hexColumn, idColumn, momentColumn, oneOf } from './columns'
import { person } from './people'

export const client = sqliteTable(
	'client',
	{
		id: idColumn<'client'>('id').primaryKey(),
		kind: text('kind').$type<'business' | 'household'>().notNull(),
		name: text('name').notNull(),
		netDays: integer('net_days').$type<15 | 30>().notNull(),
		exemptCertificate: text('exempt_certificate'),
		exemptExpires: dayColumn('exempt_expires'),
		studioNote: text('studio_note').notNull(),
		createdAt: momentColumn('created_at').notNull(),
		archivedAt: momentColumn('archived_at'),
	},
	(table) => [
		oneOf('client_kind', table.kind, ['business', 'household']),
		check('client_net_days', sql`${table.netDays} IN (15, 30)`),
		check('client_exempt', sql`(${table.exemptCertificate} IS NULL) = (${table.exemptExpires} IS NULL)`),
	],
)

export const contact = sqliteTable(
	'contact',
	{
		id: idColumn<'contact'>('id').primaryKey(),
		clientId: idColumn<'client'>('client_id')
			.notNull()
			.references(() => client.id),
		personId: idColumn<'person'>('person_id')
			.notNull()
			.references(() => person.id),
		may: text('may').$type<'approve' | 'look'>().notNull(),
		/** Of one who looks: also what is owed and paid. */
		seesMoney: integer('sees_money', { mode: 'boolean' }).notNull().default(false),
		since: momentColumn('since').notNull(),
		endedAt: momentColumn('ended_at'),
	},
	(table) => [
		unique('contact_once').on(table.clientId, table.personId),
		index('contact_person').on(table.personId),
		oneOf('contact_may', table.may, ['approve', 'look']),
		check('contact_sees_money', sql`${table.seesMoney} IN (0, 1)`),
	],
)

/** Tax in thousandths of a per cent. */
export const place = sqliteTable(
	'place',
	{
		id: idColumn<'place'>('id').primaryKey(),
		clientId: idColumn<'client'>('client_id')
			.notNull()
			.references(() => client.id),
		name: text('name').notNull(),
		address: text('address').notNull(),
		taxMilliPercent: integer('tax_milli_percent').notNull(),
		driveMinutes: real('drive_minutes').notNull(),
		zoneCents: integer('zone_cents'),
		wallKind: text('wall_kind').$type<WallKind>().notNull(),
		wallHex: hexColumn('wall_hex').notNull(),
		doorHex: hexColumn('door_hex'),
		/** USDA hardiness zone of the place, 5b being 5.5; null where nobody has looked it up. */
		hardinessZone: real('hardiness_zone'),
		accessNote: text('access_note').notNull(),
		position: integer('position').notNull(),
	},
	(table) => [
		index('place_client').on(table.clientId),
		oneOf('place_wall', table.wallKind, wallKinds),
		between('place_tax', table.taxMilliPercent, 0, 30_000),
		between('place_drive', table.driveMinutes, 0, 600),
		check('place_zone', sql`${table.zoneCents} >= 0`),
		between('place_hardiness', table.hardinessZone, 1, 13.5),
	],
)

export const siteColour = sqliteTable(
	'site_colour',
	{
		id: idColumn<'site colour'>('id').primaryKey(),
		placeId: idColumn<'place'>('place_id')
			.notNull()
			.references(() => place.id),
		name: text('name').notNull(),
		hex: hexColumn('hex').notNull(),
		side: text('side').$type<'inside' | 'outside'>().notNull(),
		position: integer('position').notNull(),
		/** Where in its photo it was found, from the left and from the top, 0 to 1; null of one that was added by eye. */
		spotX: real('spot_x'),
		spotY: real('spot_y'),
	},
	(table) => [
		between('site_colour_spot_x', table.spotX, 0, 1),
		between('site_colour_spot_y', table.spotY, 0, 1),
		index('site_colour_place').on(table.placeId),
		oneOf('site_colour_side', table.side, ['inside', 'outside']),
	],
)

/** The whole card of a container; measures in cm, weight in kg. */
export const container = sqliteTable(
	'container',
	{
		id: idColumn<'container'>('id').primaryKey(),
		placeId: idColumn<'place'>('place_id')
			.notNull()
			.references(() => place.id),
		name: text('name').notNull(),
		shape: text('shape').$type<card.Shape>().notNull(),
		topCm: real('top_cm').notNull(),
		topDepthCm: real('top_depth_cm'),
		bottomCm: real('bottom_cm').notNull(),
		bottomDepthCm: real('bottom_depth_cm'),
		heightCm: real('height_cm').notNull(),
		wall: text('wall').$type<card.WallMaterial>().notNull(),
		wallCm: real('wall_cm').notNull(),
		headspaceCm: real('headspace_cm').notNull(),
		soilDepthCm: real('soil_depth_cm'),
		hasLiner: integer('has_liner', { mode: 'boolean' }).notNull(),
		hasDrainHole: integer('has_drain_hole', { mode: 'boolean' }).notNull(),
		vesselKg: real('vessel_kg'),
		colour: hexColumn('colour').notNull(),
		owner: text('owner').$type<'client' | 'studio'>().notNull(),
		light: text('light').$type<(typeof card.lights)[number]>().notNull(),
		isWindy: integer('is_windy', { mode: 'boolean' }).notNull(),
		isUnderEave: integer('is_under_eave', { mode: 'boolean' }).notNull(),
		hasRoadSalt: integer('has_road_salt', { mode: 'boolean' }).notNull(),
		sillToGlassCm: real('sill_to_glass_cm'),
		outletNear: integer('outlet_near', { mode: 'boolean' }).notNull(),
		hoseNear: integer('hose_near', { mode: 'boolean' }).notNull(),
		waterer: text('waterer').$type<(typeof card.waterers)[number]>().notNull(),
		stands: text('stands').$type<(typeof card.stands)[number]>().notNull(),
		limitedWeight: text('limited_weight').$type<(typeof card.limits)[number]>().notNull(),
		walkLeftCm: real('walk_left_cm'),
		position: integer('position').notNull(),
		retiredAt: momentColumn('retired_at'),
	},
	(table) => [
		index('container_place').on(table.placeId),
		oneOf('container_shape', table.shape, card.shapes),
		oneOf('container_wall', table.wall, card.walls),
		oneOf('container_owner', table.owner, ['client', 'studio']),
		oneOf('container_light', table.light, card.lights),
		oneOf('container_waterer', table.waterer, card.waterers),
		oneOf('container_stands', table.stands, card.stands),
		oneOf('container_limits', table.limitedWeight, card.limits),
		between('container_top', table.topCm, 5, 1000),
		between('container_bottom', table.bottomCm, 3, 1000),
		between('container_height', table.heightCm, 5, 500),
		between('container_headspace', table.headspaceCm, 0, 50),
		check(
			'container_wall_thickness',
			sql`${table.wallCm} >= 0 AND ${table.wallCm} * 2 < min(${table.topCm}, ${table.bottomCm})`,
		),
		check('container_floor', sql`${table.wallCm} + ${table.headspaceCm} < ${table.heightCm}`),
		check('container_depths', sql`(${table.topDepthCm} IS NULL) = (${table.shape} IN ('round', 'bowl', 'urn'))`),
	],
)
