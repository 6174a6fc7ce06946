'use server'
import { stamp } from '@/app/server/start/clock'
import { isDenied, refused, studioAction } from '@/app/server/studio/studio-action'
import { saveSupplier as keepSupplier } from '@/db/catalogue/suppliers'
import { supplierForm } from '@/lib/forms/catalogue/supplier-form'

export async function saveSupplier(form: FormData): Promise<void> {
	const back = ({ supplier = '' }: Record<string, unknown>) =>
		`/studio/suppliers?${new URLSearchParams(supplier === '' ? {} : { supplier: String(supplier) })}`
	await studioAction(
		form,
		{ act: 'change the catalogue', schema: supplierForm, page: back },
		async (who, { once, supplier, ...fields }) => {
			const saved = await keepSupplier(who, supplier, fields, stamp(once))
			if (saved.ok) return { to: '/studio/suppliers' }
			if (isDenied(saved)) return refused(saved)
			return { errors: { name: 'Another supplier has this name.' } }
		},
	)
}
