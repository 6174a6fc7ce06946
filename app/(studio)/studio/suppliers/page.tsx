import type { Metadata } from 'next'
import { attemptFor } from '@/app/server/attempt'
import { first } from '@/app/server/pages'
import { hide } from '@/app/server/refusal'
import { studioPage } from '@/app/server/studio/studio-page'
import { StudioFrame } from '@/app/ui/studio/studio-frame'
import { listSuppliers } from '@/db/catalogue/suppliers'
import { quantity } from '@/lib/format/words'
import { SupplierForm } from './supplier-form'

export const metadata: Metadata = { title: 'Suppliers' }

export default async function Suppliers({ searchParams }: PageProps<'/studio/suppliers'>) {
	const { who, frame } = await studioPage('/studio/suppliers', 'see the catalogue')
	const { supplier: wanted, form } = await searchParams
	const suppliers = await listSuppliers(who)
	const chosen = suppliers.find(({ id }) => id === first(wanted))
	if (wanted !== undefined && chosen === undefined) hide(who)
	return (
		<StudioFrame {...frame} here="Materials">
			<p className="text-soft">
				<a href="/studio/materials">Materials</a>
			</p>
			<h1 className="text-4xl font-extrabold tracking-tight">Suppliers</h1>
			<div className="mt-4 grid items-start gap-x-12 gap-y-8 lg:grid-cols-[1fr_24rem]">
				<div className="overflow-x-auto">
					<table className="ledger">
						<thead>
							<tr className="text-sm text-soft">
								<th scope="col">Supplier</th>
								<th scope="col">Days from order to door</th>
								<th scope="col">Materials</th>
								<th scope="col">Note</th>
							</tr>
						</thead>
						<tbody>
							{suppliers.map(({ id, name, leadDays, note, materials }) => (
								<tr key={id}>
									<td>
										<a href={`/studio/suppliers?supplier=${id}`} className="name">
											{name}
										</a>
									</td>
									<td>{quantity(leadDays, 'day')}</td>
									<td>{materials === 0 ? 'none yet' : materials}</td>
									<td className="whitespace-pre-line">{note}</td>
								</tr>
							))}
						</tbody>
					</table>
					{suppliers.length === 0 && <p className="mt-4">Nobody yet. A material’s pack names who sells it.</p>}
				</div>
				<SupplierForm key={String(form)} supplier={chosen} attempt={await attemptFor(who, form)} />
			</div>
		</StudioFrame>
	)
}
