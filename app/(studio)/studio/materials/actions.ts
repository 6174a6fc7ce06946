'use server'
import { viewer } from '@/app/server/sign-in/session'
import { stamp } from '@/app/server/start/clock'
import { isDenied, refused, studioAction } from '@/app/server/studio/studio-action'
import { saveMaterial as keepMaterial } from '@/db/catalogue/materials'
import { readSettings } from '@/db/studio/studio'
import { materialForm } from '@/lib/forms/catalogue/material-form'

export async function saveMaterial(form: FormData): Promise<void> {
	const unit = (await readSettings(await viewer()))?.lengths ?? 'in'
	const back = ({ material }: Record<string, unknown>) =>
		`/studio/materials/card?${new URLSearchParams(material === '' ? {} : { material: String(material) })}`
	await studioAction(
		form,
		{ act: 'change the catalogue', schema: materialForm(unit), page: back },
		async (who, { once, material, supplier, size, price, freightPercent, ...fields }) => {
			const sold = { supplier, size, priceCents: price, freightPercent }
			const saved = await keepMaterial(who, material, fields, sold, stamp(once))
			if (saved.ok) return { to: '/studio/materials' }
			if (isDenied(saved)) return refused(saved)
			return { errors: { name: 'Another material has this name.' } }
		},
	)
}
