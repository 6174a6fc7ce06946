import { fieldAt } from '@/lib/forms/answer/place-keys'
import type { OfferView } from '@/lib/proposal/offer/offer-view'

/** What they take: a form that fetches this page with the total of it. */
export function Choice({ view, path }: { readonly view: OfferView; readonly path: string }) {
	const { options, extras, pots, places, onWall } = view
	const optional = pots.filter(({ mayLeaveOut }) => mayLeaveOut)
	const isOne = options.length === 1
	if (isOne && extras.length === 0 && optional.length === 0) return null
	return (
		<form method="get" action={path} className="mt-3">
			{!isOne && (
				<fieldset>
					<legend className="font-semibold">Palette</legend>
					{options.map(({ key, name, total }) => (
						<label key={key} className="mt-1 flex min-h-11 items-center gap-3">
							<input type="radio" className="tick" name="option" value={key} defaultChecked={key === onWall?.key} />
							<span className="grow">{name}</span>
							<span className="tabular-nums">{total}</span>
						</label>
					))}
				</fieldset>
			)}
			{!isOne &&
				places.length > 1 &&
				onWall !== undefined &&
				places.map((place) => (
					<label key={place.id} className="mt-3 flex flex-wrap items-center gap-3">
						<span className="grow">At {place.name}</span>
						<select className="box w-auto" name={fieldAt(place.id)} defaultValue={place.option ?? ''}>
							{options.map(({ key, name }) => (
								<option key={key} value={key}>
									{name}
								</option>
							))}
						</select>
					</label>
				))}
			{extras.length > 0 && (
				<fieldset className="mt-4">
					<legend className="font-semibold">Extras</legend>
					{extras.map(({ key, name, price, isAdded }) => (
						<label key={key} className="mt-1 flex min-h-11 items-center gap-3">
							<input type="checkbox" className="tick" name="extra" value={key} defaultChecked={isAdded} />
							<span className="grow">{name}</span>
							<span className="tabular-nums">{price}</span>
						</label>
					))}
				</fieldset>
			)}
			{optional.length > 0 && (
				<fieldset className="mt-4">
					<legend className="font-semibold">Left out</legend>
					{optional.map(({ id, name, isOut }) => (
						<label key={id} className="mt-1 flex min-h-11 items-center gap-3">
							<input type="checkbox" className="tick" name="without" value={id} defaultChecked={isOut} />
							<span>Without “{name}”</span>
						</label>
					))}
				</fieldset>
			)}
			<button type="submit" className="act mt-3">
				Work out the total
			</button>
		</form>
	)
}
