import type { Metadata } from 'next'
import { studioPage } from '@/app/server/studio/studio-page'
import { StudioFrame } from '@/app/ui/studio/studio-frame'
import { listMaterials } from '@/db/catalogue/materials'
import { readSettings } from '@/db/studio/studio'
import { moneyFormat } from '@/lib/format/money'
import { quantity } from '@/lib/format/words'
import { cents } from '@/lib/units/cents'

export const metadata: Metadata = { title: 'Materials' }

export default async function Materials() {
	const { who, frame } = await studioPage('/studio/materials', 'see the catalogue')
	const rows = await listMaterials(who)
	const money = moneyFormat((await readSettings(who))?.currency ?? 'USD')
	return (
		<StudioFrame {...frame} here="Materials">
			<div className="flex flex-wrap items-baseline justify-between gap-4">
				<h1 className="text-4xl font-extrabold tracking-tight">Materials</h1>
				<p className="flex flex-wrap items-baseline gap-x-6 gap-y-2">
					<a href="/studio/suppliers">Suppliers</a>
					<a className="act" href="/studio/materials/card">
						Add a material
					</a>
				</p>
			</div>
			<section className="overflow-x-auto" aria-label="All materials">
				<table className="ledger mt-6 min-w-3xl">
					<thead>
						<tr className="text-sm text-soft">
							<th scope="col">Material</th>
							<th scope="col">Role</th>
							<th scope="col">Kind</th>
							<th scope="col">Pack</th>
							<th scope="col">Supplier</th>
							<th scope="col" className="sum">
								In storage
							</th>
						</tr>
					</thead>
					<tbody>
						{rows.map(({ material, pack, supplier, inStock }) => (
							<tr key={material.id}>
								<td>
									<svg width="14" height="14" aria-hidden="true" className="me-2 inline">
										<rect width="14" height="14" fill={material.hex} />
									</svg>
									<a href={`/studio/materials/card?material=${material.id}`} className="name">
										{material.name}
									</a>
								</td>
								<td>{material.role}</td>
								<td>{material.kind}</td>
								<td>
									{pack === null
										? 'none yet'
										: `${quantity(pack.size, material.unit)} for ${money(cents(pack.priceCents))}`}
								</td>
								<td>{supplier}</td>
								<td className="sum">{inStock === 0 ? '' : quantity(inStock, material.unit)}</td>
							</tr>
						))}
					</tbody>
				</table>
			</section>
			{rows.length === 0 && (
				<p className="mt-4">Nothing yet. A material has a pack, in which it is bought, and its price.</p>
			)}
		</StudioFrame>
	)
}
