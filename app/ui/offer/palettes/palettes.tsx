import { numberWord } from '@/lib/format/words'
import type { OfferView, OptionView } from '@/lib/proposal/offer/offer-view'
import { Drawn, type Look } from '../drawn'
import { Palette } from './palette'

type Props = {
	readonly view: OfferView
	readonly isOpen: boolean
	readonly isChosen: boolean
	readonly pictures: string
	readonly look: Look
	/** One palette everywhere; null shows all side by side. */
	readonly hrefOf: (option: string | null) => string
}

function title(options: OfferView['options'], name: string, isChosen: boolean): string {
	if (isChosen) return `${options.length > 1 ? 'The palettes' : 'The palette'} you chose: ${name}`
	return options.length > 1 ? `${numberWord(options.length)} palettes for your wall` : `The palette: ${name}`
}

/** Each palette a strip from the paint shop, with its total; putting one on the wall picks it. Of a choice that was made only what was chosen. */
export function Palettes({ view, isOpen, isChosen, pictures, look, hrefOf }: Props) {
	const { offer, onWall, places, chosen } = view
	const isTaken = ({ isOnWall, at }: OptionView) => isOnWall || at.length > 0
	const options = isChosen ? view.options.filter(isTaken) : view.options
	const [only] = options
	if (only === undefined) return null
	const several = options.length > 1
	const isMixed = options.some(({ at }) => at.length > 0)
	return (
		<section id="palettes" className="mt-14 scroll-mt-4" aria-labelledby="palettes-title">
			<h2 id="palettes-title" className="text-3xl">
				{title(options, (isChosen && view.palette) || only.name, isChosen)}
			</h2>
			{several && isOpen && (
				<p className="no-print mt-1 text-soft">
					Put one on the wall to see what it holds and costs. Nothing is chosen until you approve.
				</p>
			)}
			{several && isOpen && onWall !== undefined && (
				<figure className="no-print sticky top-0 z-5 -mx-5 mt-4 sm:mx-0" aria-label={`On your wall: ${onWall.name}`}>
					<Drawn
						offer={offer}
						pictures={pictures}
						shown={{ ...chosen, place: places[0]?.id ?? '', option: onWall.key, ...look }}
						cut={{ phone: 'slim', wide: 'slim' }}
						className="max-h-[30vh] object-cover object-bottom"
					/>
					<p className="flex flex-wrap justify-between gap-x-4 bg-ground px-5 py-1 sm:px-0">
						<b>{onWall.at.length > 0 ? `${onWall.name} at ${places[0]?.name}` : onWall.name}</b>
						<a href={hrefOf(null)}>See all side by side</a>
					</p>
				</figure>
			)}
			<ul className={`mt-5 grid gap-5 ${several ? 'lg:grid-cols-3 print:grid-cols-3' : 'max-w-2xl'}`}>
				{options.map((option) => (
					<Palette
						key={option.key}
						option={option}
						href={several && !isChosen ? hrefOf(option.key) : null}
						isMixed={isMixed}
						isAlone={!several}
					/>
				))}
			</ul>
		</section>
	)
}
