'use server'
import { viewer } from '@/app/server/sign-in/session'
import { stamp } from '@/app/server/start/clock'
import { isDenied, refused, studioAction } from '@/app/server/studio/studio-action'
import { saveMaterial as keepMaterial, listMaterials } from '@/db/catalogue/materials'
import { keepStock as keepCount } from '@/db/catalogue/stock'
import { readSettings } from '@/db/studio/studio'
import { materialForm } from '@/lib/forms/catalogue/material-form'
import { stockForm } from '@/lib/forms/catalogue/stock-form'
import { keptTraits } from '@/lib/forms/catalogue/trait-text'

const card = ({ material = '' }: Record<string, unknown>) =>
	`/studio/materials/card?${new URLSearchParams(material === '' ? {} : { material: String(material) })}`

export async function saveMaterial(form: FormData): Promise<void> {
	const unit = (await readSettings(await viewer()))?.lengths ?? 'in'
	await studioAction(
		form,
		{ act: 'change the catalogue', schema: materialForm(unit), page: card },
		async (who, { once, material, supplier, size, price, freightPercent, ...fields }) => {
			const sold = { supplier, size, priceCents: price, freightPercent }
			const trait = (await listMaterials(who)).find((row) => row.material.id === material)?.trait ?? null
			const saved = await keepMaterial(who, material, keptTraits(fields, trait, unit), sold, stamp(once))
			if (saved.ok) return { to: '/studio/materials' }
			if (isDenied(saved)) return refused(saved)
			return { errors: { name: 'Another material has this name.' } }
		},
	)
}

/** What storage holds of one material, of the studio's or of one client's own. */
export async function keepStock(form: FormData): Promise<void> {
	await studioAction(
		form,
		{ act: 'change the catalogue', schema: stockForm, page: card },
		async (who, { once, ...held }) => {
			const kept = await keepCount(who, held, stamp(once))
			return kept.ok ? { to: card(held) } : refused(kept)
		},
	)
}
