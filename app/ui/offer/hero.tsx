import Link from 'next/link'
import type { Scene } from '@/lib/picture/scene'
import type { OfferView } from '@/lib/proposal/offer/offer-view'
import { hasLights, sceneOf } from '@/lib/proposal/offer/scene-of'
import { Drawn } from './drawn'
import { FlatHero } from './flat-hero'

type Props = {
	readonly view: OfferView
	readonly pictures: string
	/** Chosen by the client; null leaves it to their window. */
	readonly hour: Scene['hour'] | null
	readonly hrefOf: (hour: Scene['hour']) => string
}

/** The client's own wall first, with the containers before it; while no palette is picked, the same wall once for each. */
export function Hero({ view, pictures, hour, hrefOf }: Props) {
	const { offer, onWall, options, chosen } = view
	const shownOf = (option: string) => ({ place: '', option, ...chosen, hour })
	const scene = sceneOf(offer, { ...shownOf(onWall?.key ?? ''), hour: 'day', measure: 'none' })
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
							className="max-h-[78vh] object-cover object-bottom"
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
				className="max-h-[82vh] object-cover object-bottom"
				isFirst
			/>
			{hasLights(scene) && <Hour hour={hour} hrefOf={hrefOf} />}
		</div>
	)
}

const columns: Readonly<Record<number, string>> = {
	2: 'grid-cols-2',
	3: 'grid-cols-3',
	4: 'grid-cols-2 sm:grid-cols-4',
}

function Hour({ hour, hrefOf }: Pick<Props, 'hour' | 'hrefOf'>) {
	const link = (to: Scene['hour'], words: string) => (
		<Link
			href={hrefOf(to)}
			replace
			scroll={false}
			prefetch={false}
			aria-current={hour === to ? 'true' : undefined}
			className={`inline-flex min-h-11 items-center px-3 font-semibold text-ink ${hour === to ? 'no-underline' : ''}`}
		>
			{words}
		</Link>
	)
	return (
		<nav
			aria-label="Hour of the picture"
			className="no-print absolute end-2 bottom-2 flex bg-ground sm:end-4 sm:bottom-4"
		>
			{link('day', 'By day')}
			{link('evening', 'In the evening')}
		</nav>
	)
}
