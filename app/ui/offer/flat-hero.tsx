import { list } from '@/lib/format/words'
import type { OfferView } from '@/lib/proposal/offer/offer-view'
import { Wall } from '../wall'
import { Strip } from './palettes/strip'

const colours = ({ palette }: { readonly palette: OfferView['options'][number]['palette'] }) =>
	list(palette.map(({ name }) => name))

/** The wall flat in its colour with the palettes' strips before it: of revisions from before there were pictures. */
export function FlatHero({ view }: { readonly view: OfferView }) {
	const { offer, onWall, options } = view
	const [place] = offer.places
	if (place === undefined) return null
	const shown = onWall === undefined ? options : [onWall]
	const said = shown.map((option) => `${option.name}: ${colours(option)}`).join('; ')
	return (
		<div className="relative flex min-h-[19rem] items-end justify-center overflow-hidden px-4 pt-10 pb-9 sm:min-h-[26rem] sm:pb-14">
			<Wall
				kind={place.wall.kind}
				hex={place.wall.hex}
				label={`Your wall, ${place.wall.kind}, and before it ${said}`}
			/>
			<ul aria-hidden="true" className="relative flex w-full max-w-5xl items-end justify-center gap-3 sm:gap-8">
				{shown.map((option) => (
					<li
						key={option.key}
						className={`min-w-0 bg-ground p-2 shadow-[0_3px_14px_rgb(0_0_0/.35)] sm:p-3 ${shown.length === 1 ? 'w-full max-w-md' : 'max-w-64 flex-1'}`}
					>
						{shown.length === 1 ? (
							<Strip palette={option.palette.map((chip) => ({ ...chip, echoes: '' }))} tall />
						) : (
							<BareStrip palette={option.palette} />
						)}
						<p className="mt-2 text-sm leading-tight font-bold sm:text-base">{option.name}</p>
					</li>
				))}
			</ul>
		</div>
	)
}

function BareStrip({ palette }: { readonly palette: OfferView['options'][number]['palette'] }) {
	return (
		<svg
			aria-hidden="true"
			viewBox={`0 0 ${palette.length} 1`}
			preserveAspectRatio="none"
			width="100%"
			className="block h-16 sm:h-24"
		>
			{palette.map(({ hex, name }, index) => (
				<rect key={`${name} ${hex}`} x={index} width="1.02" height="1" fill={hex} />
			))}
		</svg>
	)
}
