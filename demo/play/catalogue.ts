import { saveMaterial } from '@/db/catalogue/materials'
import { saveRecipe } from '@/db/catalogue/recipes'
import { keepStock } from '@/db/catalogue/stock'
import { saveSupplier } from '@/db/catalogue/suppliers'
import type { Stamp } from '@/db/stamp'
import type { Viewer } from '@/lib/access/viewer'
import { hex } from '@/lib/units/hex'
import { type MaterialKey, materials } from '../cast/catalogue/materials'
import type { CastRecipe } from '../cast/catalogue/recipe-shape'
import { recipes } from '../cast/catalogue/recipes'
import { type CastMaterial, suppliers } from '../cast/catalogue/shape'
import { sizes } from '../cast/vessels'
import { entriesOf } from './keys'
import { must } from './must'
import type { Stage } from './stage'
import { type Act, momentOn } from './timeline'

type Play = (stage: Stage, designer: Viewer, stamp: Stamp) => Promise<void>

const keepSuppliers: Play = async ({ tell }, designer, stamp) => {
	for (const [key, { name, leadDays, note }] of entriesOf(suppliers)) {
		const told = { name: tell('supplier', key, name), leadDays, note: tell('supplier-note', key, note) }
		must(key, await saveSupplier(designer, told, stamp))
	}
}

async function keepMaterial(key: MaterialKey, of: CastMaterial, stage: Stage, designer: Viewer, stamp: Stamp) {
	const { supplier, size, priceCents, freightPercent, hazards, stock: _, ...plain } = of
	const fields = {
		...plain,
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

/** The reference container is the medium one. */
const reference = sizes.indexOf('medium')

const keepRecipes: Play = async ({ tell, materials: made }, designer, stamp) => {
	for (const [key, of] of entriesOf<Record<string, CastRecipe>>(recipes)) {
		const lines = of.lines.map(([material, role, holding, counts]) => ({
			material: made.of(material),
			role,
			holding,
			count: counts[reference] ?? 0,
		}))
		const fields = { name: of.name, quarter: of.quarter, note: tell('recipe-note', key, of.note), lines }
		must(of.name, await saveRecipe(designer, null, fields, stamp))
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
