import type { PriceView } from '@/lib/proposal/offer/price-view'

/** The price, line by line, as the server computed it for what was picked. */
export function Price({ price }: { readonly price: PriceView | undefined }) {
	if (price === undefined) return null
	return (
		<section className="whole mt-14 max-w-xl" aria-labelledby="price">
			<h2 id="price" className="text-3xl">
				The price
			</h2>
			<table className="mt-4 w-full lined tabular-nums">
				<tbody>
					{[...price.rows, ...price.taxes].map(({ key, label, amount }) => (
						<tr key={key} className="border-b border-line">
							<th scope="row" className="py-2.5 pe-4 text-start font-normal">
								{label}
							</th>
							<td className="py-2.5 text-end whitespace-nowrap">{amount}</td>
						</tr>
					))}
				</tbody>
				<tfoot>
					<tr>
						<th scope="row" className="pt-4 text-start text-3xl font-bold">
							Total
						</th>
						<td className="pt-4 text-end text-3xl font-bold whitespace-nowrap">{price.total}</td>
					</tr>
				</tfoot>
			</table>
			<p className="mt-2 text-soft">To be paid: {price.due}.</p>
			{price.notes.map((note) => (
				<p key={note} className="text-soft">
					{note}
				</p>
			))}
		</section>
	)
}
