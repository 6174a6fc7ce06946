import { TextField } from '@/app/ui/field'
import { one } from '@/app/ui/studio/settings-fields'
import { list } from '@/lib/format/words'
import { placeEntries } from '@/lib/forms/answer/place-keys'
import type { OfferView } from '@/lib/proposal/offer/offer-view'
import { takeApproval } from './actions'
import { attemptOf, type Of, Said } from './said'

type Props = { readonly view: OfferView; readonly of: Of; readonly isBusiness: boolean }

/** The choice and its total once more, and the button that writes it down. */
export function Yes({ view, of, isBusiness }: Props) {
	const { onWall, picked, price, extras, pots } = view
	if (onWall === undefined || picked === undefined || price === undefined)
		return <p className="mt-5 text-soft">Choose the palette that they take first, and work out the total.</p>
	const { typed, errors } = attemptOf(of, 'yes')
	const added = extras.filter(({ isAdded }) => isAdded).map(({ name }) => name)
	const out = pots.filter(({ isOut }) => isOut).map(({ name }) => name)
	return (
		<form action={takeApproval} className="mt-6 border-t-2 border-ink pt-4" noValidate>
			<p className="text-lg">
				<b>{view.palette ?? onWall.name}</b>
				{added.length > 0 && `, with ${list(added)}`}
				{out.length > 0 && `, without ${list(out)}`}: <b className="tabular-nums">{price.total}</b>
			</p>
			<p className="text-soft">To be paid: {price.due}.</p>
			<Said of={of} kind="yes" errors={errors} />
			<input type="hidden" name="option" value={picked.option} />
			{placeEntries(picked.places).map((each) => (
				<input key={each} type="hidden" name="place" value={each} />
			))}
			{picked.extras.map((each) => (
				<input key={each} type="hidden" name="extra" value={each} />
			))}
			{picked.leftOut.map((each) => (
				<input key={each} type="hidden" name="without" value={each} />
			))}
			{isBusiness ? (
				<TextField
					name="purchaseOrder"
					label="Purchase-order number (optional)"
					value={one(typed, 'purchaseOrder')}
					error={errors.purchaseOrder}
				/>
			) : (
				<input type="hidden" name="purchaseOrder" value="" />
			)}
			<button type="submit" className="act first mt-5">
				Write down the approval
			</button>
		</form>
	)
}
