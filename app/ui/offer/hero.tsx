import Link from 'next/link'
import type { LengthUnit } from '@/lib/format/length'
import type { OfferView } from '@/lib/proposal/offer/offer-view'
import { hasLights, sceneOf } from '@/lib/proposal/offer/scene-of'
import { Drawn, type Look } from './drawn'
import { FlatHero } from './flat-hero'

type Props = {
	readonly view: OfferView
	readonly pictures: string
	readonly look: Look
	/** How the studio measures. */
	readonly lengths: LengthUnit
	readonly hrefOf: (look: Look) => string
}

/** The client's own wall first, with the containers before it; while no palette is picked, the same wall once for each. */
export function Hero({ view, pictures, look, lengths, hrefOf }: Props) {
	const { offer, onWall, options, places, chosen } = view
	const shownOf = (option: string) => ({ ...chosen, place: places[0]?.id ?? '', option, ...look })
	const scene = sceneOf(offer, { ...shownOf(onWall?.key ?? ''), hour: 'day' })
	if (scene === undefined) return <FlatHero view={view} />
	if (onWall === undefined)
		return (
			<ul className={`grid gap-px bg-ground ${columns[options.length] ?? 'grid-cols-2'}`}>
				{options.map(({ key, name }) => (
					<li key={key} className="relative">
						<Drawn
							offer={offer}
							pictures={pictures}
							shown={shownOf(key)}
							name={name}
							cut={{ phone: 'tall', wide: 'panel' }}
							className="max-h-[78vh] print:max-h-none object-cover object-bottom"
							isFirst
						/>
						<a
							href="#palettes"
							className="absolute start-2 bottom-2 bg-ground px-2 py-1 text-sm leading-tight font-bold text-ink no-underline sm:start-4 sm:bottom-4 sm:text-base"
						>
							{name}
						</a>
					</li>
				))}
			</ul>
		)
	return (
		<div className="relative">
			<Drawn
				offer={offer}
				pictures={pictures}
				shown={shownOf(onWall.key)}
				name={onWall.name}
				cut={{ phone: 'phone', wide: 'wide' }}
				className="max-h-[82vh] print:max-h-none object-cover object-bottom"
				isFirst
			/>
			<Looks look={look} lengths={lengths} hrefOf={hrefOf} hasEvening={hasLights(scene)} />
		</div>
	)
}

const columns: Readonly<Record<number, string>> = {
	2: 'grid-cols-2',
	3: 'grid-cols-3',
	4: 'grid-cols-2 sm:grid-cols-4',
}

type LooksProps = Pick<Props, 'look' | 'lengths' | 'hrefOf'> & { readonly hasEvening: boolean }

/** How the picture may be looked at: the hour, where there are lights to see by, and a measure beside the pots. */
function Looks({ look, lengths, hrefOf, hasEvening }: LooksProps) {
	const isMeasured = look.measure !== 'none'
	return (
		<div className="no-print flex flex-wrap justify-end gap-1 bg-ground sm:absolute sm:end-4 sm:bottom-4 sm:bg-transparent">
			<LookLink href={hrefOf({ ...look, measure: isMeasured ? 'none' : lengths })}>
				{isMeasured ? 'Hide the measure' : 'Show the measure'}
			</LookLink>
			{hasEvening && (
				<nav aria-label="Hour of the picture" className="flex">
					<LookLink href={hrefOf({ ...look, hour: 'day' })} isNow={look.hour === 'day'}>
						By day
					</LookLink>
					<LookLink href={hrefOf({ ...look, hour: 'evening' })} isNow={look.hour === 'evening'}>
						In the evening
					</LookLink>
				</nav>
			)}
		</div>
	)
}

type LookLinkProps = { readonly href: string; readonly isNow?: boolean; readonly children: string }

function LookLink({ href, isNow = false, children }: LookLinkProps) {
	return (
		<Link
			href={href}
			replace
			scroll={false}
			prefetch={false}
			aria-current={isNow ? 'true' : undefined}
			className={`inline-flex min-h-11 items-center bg-ground px-3 font-semibold text-ink ${isNow ? 'no-underline' : ''}`}
		>
			{children}
		</Link>
	)
}
