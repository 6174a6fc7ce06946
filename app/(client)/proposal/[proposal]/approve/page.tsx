import type { Metadata } from 'next'
import { redirect } from 'next/navigation'
import { v7 } from 'uuid'
import { answerable } from '@/app/server/answers/answer-page'
import { pickedOf } from '@/app/server/answers/picked'
import { attemptFor } from '@/app/server/attempt'
import { ClientFrame } from '@/app/ui/client-frame'
import { ErrorSummary } from '@/app/ui/error-summary'
import { TextField } from '@/app/ui/field'
import { chosenQuery } from '@/app/ui/offer/chosen-query'
import { one } from '@/app/ui/studio/settings-fields'
import { list } from '@/lib/format/words'
import { placeEntries } from '@/lib/forms/answer/place-keys'
import { offerView } from '@/lib/proposal/offer/offer-view'
import { Rows } from './rows'

export const metadata: Metadata = { title: 'Check before you approve' }

export default async function Approve({ params, searchParams }: PageProps<'/proposal/[proposal]/approve'>) {
	const query = await searchParams
	const { revision, form } = query
	const { who, me, path, page, offer } = await answerable((await params).proposal, revision)
	const view = offerView(offer, undefined, pickedOf(query))
	if (view.onWall === undefined || view.picked === undefined || view.price === undefined) redirect(`${path}#palettes`)
	const { typed, errors } = await attemptFor(who, form)
	const { option: key, places, extras, leftOut } = view.picked
	const back = `${path}?${chosenQuery(view, page.hash)}`
	const added = view.extras.filter(({ isAdded }) => isAdded).map(({ name }) => name)
	const out = view.pots.filter(({ isOut }) => isOut).map(({ name }) => name)
	const isBusiness = offer.options.some(({ prices }) => prices.payer.kind === 'business')
	const rows = [
		{
			label: 'Palette',
			value: view.palette ?? view.onWall.name,
			change: offer.options.length > 1 ? `${back}#palettes` : undefined,
		},
		...(offer.extras.length > 0 ? [{ label: 'Extras', value: list(added) || 'none', change: `${back}#choice` }] : []),
		...(view.pots.some(({ mayLeaveOut }) => mayLeaveOut)
			? [{ label: 'Left out', value: list(out) || 'nothing', change: `${back}#choice` }]
			: []),
		{ label: 'Goes in', value: view.goesIn },
		{ label: 'Total', value: view.price.total },
		{ label: 'To be paid', value: view.price.due },
	]
	return (
		<ClientFrame studio={offer.studio} who={me} season={offer.season}>
			<div className="mx-auto max-w-2xl px-5 pt-8">
				<p>
					<a href={back}>Back to the design</a>
				</p>
				<h1 className="mt-4 text-4xl">Check before you approve</h1>
				<p className="mt-2 text-lg">
					{offer.title}
					{page.number > 1 && `, revision ${page.number}`}. It is approved only when you press the button below.
				</p>
				<ErrorSummary errors={errors} labels={{ purchaseOrder: 'Purchase-order number' }} />
				<Rows rows={rows} />
				<form method="post" action={`${path}/answer/approve`} noValidate>
					<input type="hidden" name="once" value={v7()} />
					<input type="hidden" name="revision" value={page.hash} />
					<input type="hidden" name="option" value={key} />
					{placeEntries(places).map((each) => (
						<input key={each} type="hidden" name="place" value={each} />
					))}
					{extras.map((each) => (
						<input key={each} type="hidden" name="extra" value={each} />
					))}
					{leftOut.map((each) => (
						<input key={each} type="hidden" name="without" value={each} />
					))}
					{isBusiness ? (
						<TextField
							name="purchaseOrder"
							label="Purchase-order number (optional)"
							hint="It will stand on your receipt and on the invoice."
							value={one(typed, 'purchaseOrder')}
							error={errors.purchaseOrder}
						/>
					) : (
						<input type="hidden" name="purchaseOrder" value="" />
					)}
					<button type="submit" className="act first mt-8 w-full sm:w-auto">
						Approve this design
					</button>
				</form>
			</div>
		</ClientFrame>
	)
}
