import { saveMaterial, type TraitFields } from '@/db/catalogue/materials'
import { saveRecipe } from '@/db/catalogue/recipes'
import { keepStock } from '@/db/catalogue/stock'
import { saveSupplier } from '@/db/catalogue/suppliers'
import type { Stamp } from '@/db/stamp'
import type { Viewer } from '@/lib/access/viewer'
import type { Role } from '@/lib/recipe/material'
import type { Grows } from '@/lib/recipe/recipe'
import { hex } from '@/lib/units/hex'
import { looks } from '../cast/catalogue/looks'
import { type MaterialKey, materials } from '../cast/catalogue/materials'
import type { CastRecipe } from '../cast/catalogue/recipe-shape'
import { type RecipeKey, recipes } from '../cast/catalogue/recipes'
import { type CastMaterial, suppliers } from '../cast/catalogue/shape'
import { sizes } from '../cast/vessels'
import { entriesOf } from './keys'
import { must } from './must'
import type { Stage } from './stage'
import { type Act, momentOn } from './timeline'

type Play = (stage: Stage, designer: Viewer, stamp: Stamp) => Promise<void>

function traitsOf(key: MaterialKey): TraitFields {
	const { form, second, length, across, had = [1, 12], lasts = [1, 12], regulated = '', ...more } = looks[key]
	return {
		form,
		secondHex: second === undefined ? null : hex(second),
		lengthCm: length ?? null,
		acrossCm: across ?? null,
		hadFrom: had[0],
		hadTo: had[1],
		lastsFrom: lasts[0],
		lastsTo: lasts[1],
		zone: more.zone ?? null,
		needs: more.needs ?? 'any',
		spacingCm: more.spacing ?? null,
		rootBallLitres: more.rootBall ?? null,
		kgEach: more.kg ?? null,
		watts: more.watts ?? null,
		mostEndToEnd: more.endToEnd ?? null,
		regulated,
	}
}

const keepSuppliers: Play = async ({ tell }, designer, stamp) => {
	for (const [key, { name, leadDays, note }] of entriesOf(suppliers)) {
		const told = { name: tell('supplier', key, name), leadDays, note: tell('supplier-note', key, note) }
		must(key, await saveSupplier(designer, null, told, stamp))
	}
}

async function keepMaterial(key: MaterialKey, of: CastMaterial, stage: Stage, designer: Viewer, stamp: Stamp) {
	const { supplier, size, priceCents, freightPercent, hazards, stock: _, ...plain } = of
	const fields = {
		...plain,
		...traitsOf(key),
		hex: hex(of.hex),
		isPoisonousToPeople: hazards.includes('poisonous to people'),
		isPoisonousToPets: hazards.includes('poisonous to pets'),
		hasSmallParts: hazards.includes('small parts'),
	}
	const named = stage.tell('supplier', supplier, suppliers[supplier].name)
	const pack = { supplier: named, size, priceCents, freightPercent }
	stage.materials.put(key, must(of.name, await saveMaterial(designer, null, fields, pack, stamp)).id)
}

const keepMaterials: Play = async (stage, designer, stamp) => {
	for (const [key, of] of entriesOf(materials)) await keepMaterial(key, of, stage, designer, stamp)
}

/** Three faces are viewed of the reference container, which is round and seen all round. */
const faces = 3

/** How a count for the reference container grows to others: live plants by their spacing, the rest by what they are. */
function growsFrom(key: MaterialKey, role: Role, count: number): Grows {
	const { kind, piece } = materials[key]
	if (piece === 'plant') return { way: 'spacing', share: role === 'filler' ? 0.35 : 0.15 }
	if (role === 'mechanics') return { way: 'held', count, holds: null }
	if (role === 'filler') return { way: 'greens', count }
	if (role === 'spiller') return { way: 'rim', count }
	if (role === 'thriller') return { way: 'stems', count }
	return kind === 'light' || count < faces
		? { way: 'fixed', count }
		: { way: 'faces', count: Math.round(count / faces) }
}

/** The reference container is the medium one. */
const reference = sizes.indexOf('medium')

const keepRecipes: Play = async ({ tell, materials: made, recipes: kept }, designer, stamp) => {
	for (const [key, of] of entriesOf<Record<RecipeKey, CastRecipe>>(recipes)) {
		const lines = of.lines.map(([material, role, holding, counts]) => ({
			material: made.of(material),
			role,
			holding,
			grows: growsFrom(material, role, counts[reference] ?? 0),
		}))
		const fields = { name: of.name, quarter: of.quarter, note: tell('recipe-note', key, of.note), lines }
		kept.put(key, must(of.name, await saveRecipe(designer, null, fields, stamp)).id)
	}
}

/** Counted when all clients are there, since some things in storage are theirs. */
const countStock: Play = async (stage, designer, stamp) => {
	for (const [key, { stock }] of entriesOf<Record<MaterialKey, CastMaterial>>(materials)) {
		if (stock === undefined) continue
		const { quantity, usesBefore, client } = stock
		const owner = client === undefined ? null : stage.clients.of(client)
		const held = { material: stage.materials.of(key), client: owner, quantity, usesBefore }
		must(key, await keepStock(designer, held, stamp))
	}
}

const acts = [
	{ on: -149, at: '13:15', keep: keepSuppliers },
	{ on: -149, at: '14:00', keep: keepMaterials },
	{ on: -148, at: '18:30', keep: keepRecipes },
	{ on: -90, at: '19:10', keep: countStock },
] as const

export const catalogue = (stage: Stage): Act[] =>
	acts.map(({ on, at, keep }) => ({
		at: momentOn(stage.today, on, at),
		run: async (stamp) => keep(stage, await stage.designer(), stamp),
	}))
