import Link from 'next/link'
import { numberWord } from '@/lib/format/words'
import type { OfferView } from '@/lib/proposal/offer-view'
import { Colours } from '../colours'
import { Strip } from '../strip'
import { Wall } from '../wall'

type Props = { readonly view: OfferView; readonly hrefOf: (option: string) => string }

/** Each palette a strip from the paint shop, with its total; putting one on the wall picks it. */
export function Palettes({ view, hrefOf }: Props) {
	const { options } = view
	const [only] = options
	if (only === undefined) return null
	const several = options.length > 1
	return (
		<section id="palettes" className="mt-14 scroll-mt-4" aria-labelledby="palettes-title">
			<h2 id="palettes-title" className="text-3xl">
				{several ? `${numberWord(options.length)} palettes for your wall` : `The palette: ${only.name}`}
			</h2>
			{several && (
				<p className="mt-1 text-soft">
					Put one on the wall above to see what it holds and costs. Nothing is chosen until you approve.
				</p>
			)}
			{several && <WallInView view={view} />}
			<ul className={`mt-5 grid gap-5 ${several ? 'md:grid-cols-3' : 'max-w-2xl'}`}>
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
							<p className="mt-3">
								{option.isOnWall ? (
									<span className="inline-flex min-h-11 items-center font-semibold text-soft">On your wall now</span>
								) : (
									<Link
										href={hrefOf(option.key)}
										replace
										scroll={false}
										prefetch={false}
										className="does inline-flex min-h-11 items-center"
									>
										Put it on the wall<span className="sr-only">: {option.name}</span>
									</Link>
								)}
							</p>
						)}
					</li>
				))}
			</ul>
		</section>
	)
}

/** On a phone the wall stays in view while one goes through the palettes. */
function WallInView({ view: { offer, onWall } }: Pick<Props, 'view'>) {
	const [place] = offer.places
	if (place === undefined || onWall === undefined) return null
	return (
		<div
			aria-hidden="true"
			className="sticky top-0 z-5 -mx-5 mt-4 flex h-32 items-end justify-center overflow-hidden pb-3 sm:hidden"
		>
			<Wall kind={place.wall.kind} hex={place.wall.hex} label="" />
			<div className="relative w-3/5 bg-ground p-1.5 shadow-[0_2px_8px_rgb(0_0_0/.35)]">
				<Colours hexes={onWall.palette.map(({ hex }) => hex).join(' ')} height={44} />
			</div>
		</div>
	)
}
