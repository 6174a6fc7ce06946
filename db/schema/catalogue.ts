import { sql } from 'drizzle-orm'
import { check, index, integer, real, sqliteTable, text, uniqueIndex } from 'drizzle-orm/sqlite-core'
import { type Form, forms } from '@/lib/recipe/look'
import * as material_ from '@/lib/recipe/material'
import { type Grows, ways } from '@/lib/recipe/recipe'
import { type LightNeed, lightNeeds } from '@/lib/recipe/traits'
import { type Quarter, quarters } from '@/lib/season/season'
import { client } from './clients'
import { between, hexColumn, idColumn, momentColumn, oneOf } from './columns'

export const supplier = sqliteTable(
	'supplier',
	{
		id: idColumn<'supplier'>('id').primaryKey(),
		name: text('name').notNull().unique(),
		leadDays: integer('lead_days').notNull(),
		note: text('note').notNull(),
	},
	(table) => [between('supplier_lead', table.leadDays, 0, 365)],
)

export const material = sqliteTable(
	'material',
	{
		id: idColumn<'material'>('id').primaryKey(),
		name: text('name').notNull().unique(),
		kind: text('kind').$type<material_.Kind>().notNull(),
		piece: text('piece').$type<material_.Piece>().notNull(),
		role: text('role').$type<material_.Role>().notNull(),
		unit: text('unit').$type<material_.Unit>().notNull(),
		piecesPerUnit: real('pieces_per_unit').notNull(),
		hex: hexColumn('hex').notNull(),
		isPoisonousToPeople: integer('is_poisonous_to_people', { mode: 'boolean' }).notNull(),
		isPoisonousToPets: integer('is_poisonous_to_pets', { mode: 'boolean' }).notNull(),
		hasSmallParts: integer('has_small_parts', { mode: 'boolean' }).notNull(),
		retiredAt: momentColumn('retired_at'),
	},
	(table) => [
		oneOf('material_kind', table.kind, material_.kinds),
		oneOf('material_piece', table.piece, material_.pieces),
		oneOf('material_role', table.role, material_.roles),
		oneOf('material_unit', table.unit, material_.units),
		between('material_pieces', table.piecesPerUnit, 0.001, 10_000),
	],
)

/** How a piece of a material looks, and what it needs and does outside; a material without it is drawn by its role. */
export const trait = sqliteTable(
	'trait',
	{
		materialId: idColumn<'material'>('material_id')
			.primaryKey()
			.references(() => material.id),
		form: text('form').$type<Form>().notNull(),
		secondHex: hexColumn('second_hex'),
		lengthCm: real('length_cm'),
		acrossCm: real('across_cm'),
		/** Months from which and to which, January 1: over the turn of the year where the first is the later. */
		hadFrom: integer('had_from').notNull(),
		hadTo: integer('had_to').notNull(),
		lastsFrom: integer('lasts_from').notNull(),
		lastsTo: integer('lasts_to').notNull(),
		/** USDA hardiness zone, 5b being 5.5. */
		zone: real('zone'),
		needs: text('needs').$type<LightNeed>().notNull(),
		spacingCm: real('spacing_cm'),
		rootBallLitres: real('root_ball_litres'),
		kgEach: real('kg_each'),
		watts: real('watts'),
		mostEndToEnd: integer('most_end_to_end'),
		regulated: text('regulated').notNull(),
	},
	(table) => [
		oneOf('trait_form', table.form, forms),
		oneOf('trait_needs', table.needs, lightNeeds),
		between('trait_length', table.lengthCm, 0.1, 1000),
		between('trait_across', table.acrossCm, 0.1, 1000),
		between('trait_had_from', table.hadFrom, 1, 12),
		between('trait_had_to', table.hadTo, 1, 12),
		between('trait_lasts_from', table.lastsFrom, 1, 12),
		between('trait_lasts_to', table.lastsTo, 1, 12),
		between('trait_zone', table.zone, 1, 13.5),
		between('trait_spacing', table.spacingCm, 1, 500),
		between('trait_root_ball', table.rootBallLitres, 0.01, 500),
		between('trait_weight', table.kgEach, 0, 500),
		between('trait_watts', table.watts, 0, 5000),
		between('trait_end_to_end', table.mostEndToEnd, 1, 200),
	],
)

/** How a material is sold, by whom and for what. */
export const pack = sqliteTable(
	'pack',
	{
		id: idColumn<'pack'>('id').primaryKey(),
		materialId: idColumn<'material'>('material_id')
			.notNull()
			.references(() => material.id),
		supplierId: idColumn<'supplier'>('supplier_id')
			.notNull()
			.references(() => supplier.id),
		size: real('size').notNull(),
		priceCents: integer('price_cents').notNull(),
		freightPercent: real('freight_percent').notNull(),
		retiredAt: momentColumn('retired_at'),
	},
	(table) => [
		index('pack_material').on(table.materialId),
		between('pack_size', table.size, 0.001, 100_000),
		between('pack_price', table.priceCents, 0, 10_000_000),
		between('pack_freight', table.freightPercent, 0, 100),
	],
)

/** What storage holds: the studio's, or one client's own. `usesBefore` counts the seasons that it has stood outside. */
export const stock = sqliteTable(
	'stock',
	{
		id: idColumn<'stock'>('id').primaryKey(),
		materialId: idColumn<'material'>('material_id')
			.notNull()
			.references(() => material.id),
		clientId: idColumn<'client'>('client_id').references(() => client.id),
		quantity: real('quantity').notNull(),
		usesBefore: integer('uses_before').notNull(),
	},
	(table) => [
		uniqueIndex('stock_of_client').on(table.materialId, table.clientId),
		uniqueIndex('stock_of_studio').on(table.materialId).where(sql`${table.clientId} IS NULL`),
		check('stock_quantity', sql`${table.quantity} >= 0`),
		between('stock_uses', table.usesBefore, 0, 100),
	],
)

/** What goes into one reference container. */
export const recipe = sqliteTable(
	'recipe',
	{
		id: idColumn<'recipe'>('id').primaryKey(),
		name: text('name').notNull().unique(),
		quarter: text('quarter').$type<Quarter>().notNull(),
		note: text('note').notNull(),
	},
	(table) => [oneOf('recipe_quarter', table.quarter, quarters)],
)

export const recipeLine = sqliteTable(
	'recipe_line',
	{
		id: idColumn<'recipe line'>('id').primaryKey(),
		recipeId: idColumn<'recipe'>('recipe_id')
			.notNull()
			.references(() => recipe.id),
		position: integer('position').notNull(),
		materialId: idColumn<'material'>('material_id')
			.notNull()
			.references(() => material.id),
		role: text('role').$type<material_.Role>().notNull(),
		holding: text('holding').$type<material_.Holding>().notNull(),
		way: text('way').$type<Grows['way']>().notNull(),
		/** Of the reference container; of a live plant the share of the opening, 0 to 1. */
		count: real('count').notNull(),
		holdsId: idColumn<'material'>('holds_id').references(() => material.id),
	},
	(table) => [
		uniqueIndex('recipe_line_position').on(table.recipeId, table.position),
		oneOf('recipe_line_role', table.role, material_.roles),
		oneOf('recipe_line_holding', table.holding, material_.holdings),
		oneOf('recipe_line_way', table.way, ways),
		between('recipe_line_count', table.count, 0.001, 9999),
	],
)
