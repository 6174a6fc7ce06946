import { fieldAt } from '@/lib/forms/answer/place-keys'
import type { OfferView, OptionView, PlaceView } from '@/lib/proposal/offer/offer-view'
import { Colours } from '../../colours'
import { Drawn, type Look } from '../drawn'
import { Opened } from './opened'

type Props = {
	readonly view: OfferView
	readonly pictures: string
	readonly look: Look
}

/** Another palette for a place, where there are several of both: part of the one form, whose answer is the page with the new total. */
export function ByPlace({ view, pictures, look }: Props) {
	const { offer, onWall, options, places, chosen } = view
	if (onWall === undefined || options.length < 2 || places.length < 2) return null
	return (
		<Opened isOpen={Object.keys(chosen.places).length > 0} className="no-print mt-6 border-t border-line pt-3">
			<summary className="min-h-11 cursor-pointer py-2">
				<h3 className="inline text-xl">Another palette for a place?</h3>
			</summary>
			<p className="text-soft">Each place may have its own. The total follows what you pick.</p>
			<div className="mt-4 grid gap-x-8 gap-y-8 lg:grid-cols-2">
				{places.map((place) => (
					<fieldset key={place.id} className="min-w-0">
						<legend className="text-lg font-semibold">{place.name}</legend>
						<Drawn
							offer={offer}
							pictures={pictures}
							shown={{ ...chosen, place: place.id, option: place.option, ...look }}
							cut={{ phone: 'slim', wide: 'slim' }}
							className="mt-2"
						/>
						{options.map((option) => (
							<Choice key={option.key} place={place} option={option} />
						))}
					</fieldset>
				))}
			</div>
			<noscript>
				<button type="submit" form="choice" className="act mt-5">
					Update the total
				</button>
			</noscript>
		</Opened>
	)
}

function Choice({ place, option }: { readonly place: PlaceView; readonly option: OptionView }) {
	return (
		<label className="flex min-h-11 items-center gap-4 border-b border-line py-2">
			<input
				type="radio"
				form="choice"
				className="tick shrink-0"
				name={fieldAt(place.id)}
				value={option.key}
				defaultChecked={place.option === option.key}
			/>
			<span className="min-w-0 grow">{option.name}</span>
			<span className="w-28 shrink-0 sm:w-36">
				<Colours hexes={option.palette.map(({ hex }) => hex).join(' ')} height={28} />
			</span>
		</label>
	)
}
