import type { OfferView } from '@/lib/proposal/offer/offer-view'
import { Drawn, type Look } from './drawn'

type Props = { readonly view: OfferView; readonly pictures: string; readonly look: Look }

/** What is in each pot, as one would tell a neighbour; pots that hold the same are told once. */
export function Pots({ view, pictures, look }: Props) {
	const { offer, onWall, options, places, chosen } = view
	const isMixed = Object.keys(chosen.places).length > 0
	if (onWall === undefined) return null
	return (
		<section className="mt-14" aria-labelledby="pots">
			<h2 id="pots" className="text-3xl">
				What is in each pot
			</h2>
			{places.slice(1).map(({ id, name, option }) => (
				<figure key={id} className="mt-5">
					<Drawn
						offer={offer}
						pictures={pictures}
						name={name}
						shown={{ ...chosen, place: id, option, ...look }}
						cut={{ phone: 'phone', wide: 'wide' }}
					/>
					<figcaption className="mt-1 text-soft">
						{name}
						{isMixed && `: ${options.find(({ key }) => key === option)?.name}`}
					</figcaption>
				</figure>
			))}
			{view.potGroups.map(({ names, words, layers }) => (
				<div key={names.join()} className="whole mt-5">
					<h3 className="text-lg">{names.join(' · ')}</h3>
					<p className="text-soft">{words.join('; ')}</p>
					<dl className="mt-2 lined">
						{layers.map(({ role, place, words }) => (
							<div key={role} className="grid gap-x-6 border-b border-line py-3 sm:grid-cols-[12rem_1fr]">
								<dt className="font-semibold">{place}</dt>
								<dd>{words}</dd>
							</div>
						))}
					</dl>
				</div>
			))}
		</section>
	)
}
