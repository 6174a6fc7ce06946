import Link from 'next/link'
import { numberWord } from '@/lib/format/words'
import type { OfferView } from '@/lib/proposal/offer/offer-view'
import { Strip } from '../strip'
import { Drawn, type Look } from './drawn'

type Props = {
	readonly view: OfferView
	readonly isOpen: boolean
	readonly isChosen: boolean
	readonly pictures: string
	readonly look: Look
	/** Null shows all side by side. */
	readonly hrefOf: (option: string | null) => string
}

function title(options: OfferView['options'], name: string, isChosen: boolean): string {
	if (isChosen) return `The palette you chose: ${name}`
	return options.length > 1 ? `${numberWord(options.length)} palettes for your wall` : `The palette: ${name}`
}

/** Each palette a strip from the paint shop, with its total; putting one on the wall picks it. Of a choice that was made only what was chosen. */
export function Palettes({ view, isOpen, isChosen, pictures, look, hrefOf }: Props) {
	const { offer, onWall, chosen } = view
	const options = isChosen ? view.options.filter(({ isOnWall }) => isOnWall) : view.options
	const [only] = options
	if (only === undefined) return null
	const several = options.length > 1
	return (
		<section id="palettes" className="mt-14 scroll-mt-4" aria-labelledby="palettes-title">
			<h2 id="palettes-title" className="text-3xl">
				{title(options, only.name, isChosen)}
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
						shown={{ place: '', option: onWall.key, ...chosen, ...look }}
						cut={{ phone: 'slim', wide: 'slim' }}
						className="max-h-[30vh] object-cover object-bottom"
					/>
					<p className="flex flex-wrap justify-between gap-x-4 bg-ground px-5 py-1 sm:px-0">
						<b>{onWall.name}</b>
						<a href={hrefOf(null)}>See all side by side</a>
					</p>
				</figure>
			)}
			<ul className={`mt-5 grid gap-5 ${several ? 'lg:grid-cols-3 print:grid-cols-3' : 'max-w-2xl'}`}>
				{options.map((option) => (
					<li
						key={option.key}
						className={`p-4 ${option.isOnWall && several ? 'outline-3 outline-ink' : 'outline-1 outline-line'}`}
					>
						{several && (
							<p className="mb-3 flex items-baseline justify-between gap-3">
								<b className="text-lg leading-tight">{option.name}</b>
								<span className="font-semibold tabular-nums">{option.total}</span>
							</p>
						)}
						<Strip palette={option.palette} tall={!several} />
						{several && (
							<p className="no-print mt-3">
								<Link
									href={hrefOf(option.key)}
									replace
									scroll={false}
									prefetch={false}
									aria-current={option.isOnWall ? 'true' : undefined}
									className={`does inline-flex min-h-11 items-center ${option.isOnWall ? 'text-soft no-underline' : ''}`}
								>
									{option.isOnWall ? 'On your wall now' : 'Put it on the wall'}
									<span className="sr-only">: {option.name}</span>
								</Link>
							</p>
						)}
					</li>
				))}
			</ul>
		</section>
	)
}
