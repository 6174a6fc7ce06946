import type { Metadata } from 'next'
import { v7 } from 'uuid'
import { attemptFor } from '@/app/server/attempt'
import { first } from '@/app/server/pages'
import { hide } from '@/app/server/refusal'
import { studioPage } from '@/app/server/studio/studio-page'
import { ErrorSummary } from '@/app/ui/error-summary'
import { StudioFrame } from '@/app/ui/studio/studio-frame'
import { listMaterials } from '@/db/catalogue/materials'
import { readStock } from '@/db/catalogue/read-stock'
import { listClients } from '@/db/clients/list-clients'
import { readSettings } from '@/db/studio/studio'
import { traitText } from '@/lib/forms/catalogue/trait-text'
import { saveMaterial } from '../actions'
import { MaterialFields, materialLabels } from './material-fields'
import { savedFields } from './saved-fields'
import { Storage, storageLabels } from './storage'

export const metadata: Metadata = { title: 'Material' }

export default async function MaterialCard({ searchParams }: PageProps<'/studio/materials/card'>) {
	const { who, frame } = await studioPage('/studio/materials/card', 'change the catalogue')
	const { material: wanted, form, own } = await searchParams
	const row = (await listMaterials(who)).find(({ material }) => material.id === first(wanted))
	if (wanted !== undefined && row === undefined) hide(who)
	const { typed: tried, errors } = await attemptFor(who, form)
	const unit = (await readSettings(who))?.lengths ?? 'in'
	const typed = { ...savedFields(row), ...traitText(row?.trait ?? null, unit), ...tried }
	return (
		<StudioFrame {...frame} here="Materials">
			<h1 className="text-4xl font-extrabold tracking-tight">{row?.material.name ?? 'Add a material'}</h1>
			<ErrorSummary errors={errors} labels={{ ...materialLabels, ...storageLabels }} />
			<div className="grid items-start gap-x-14 gap-y-10 lg:grid-cols-[36rem_1fr]">
				<form key={String(form)} action={saveMaterial} className="max-w-xl" noValidate>
					<input type="hidden" name="once" value={v7()} />
					<input type="hidden" name="material" value={row?.material.id ?? ''} />
					<MaterialFields typed={typed} errors={errors} unit={unit} />
					<button type="submit" className="act first mt-8">
						Save the material
					</button>
				</form>
				{row && (
					<Storage
						key={`${String(form)} ${String(own)}`}
						of={row.material}
						held={await readStock(who, row.material.id)}
						clients={await listClients(who)}
						chosen={first(own) ?? ''}
						attempt={{ typed: tried, errors }}
					/>
				)}
			</div>
		</StudioFrame>
	)
}
