import { type Cut, pictureQuery } from '@/lib/forms/pictures/picture-address'
import type { Scene } from '@/lib/picture/scene'
import { describeScene } from '@/lib/picture/words/describe-scene'
import type { Offer } from '@/lib/proposal/offer/offer'
import { hasLights, type Shown, sceneOf } from '@/lib/proposal/offer/scene-of'

/** How the pictures of a page are looked at; an hour that nobody chose is left to the window. */
export type Look = { readonly hour: Scene['hour'] | null; readonly measure: Scene['measure'] }

type Props = {
	readonly offer: Offer
	/** Address of the offer's pictures, without a query. */
	readonly pictures: string
	readonly shown: Omit<Shown, 'hour' | 'measure'> & Look
	/** By the width of the window: how it is cut on a phone, and elsewhere. */
	readonly cut: { readonly phone: Cut; readonly wide: Cut }
	/** What is shown, before the description; without it the picture says nothing that another has not said. */
	readonly name?: string
	readonly className?: string
	readonly isFirst?: boolean
}

const phone = '(max-width: 40rem)'
const dusk = '(prefers-color-scheme: dark)'

/**
 * A picture of an offer with its description. Where nobody chose the hour, a window at dusk shows the evening, if there
 * are lights to be seen by.
 */
export function Drawn({ offer, pictures, shown, cut, name, className = '', isFirst = false }: Props) {
	const scene = sceneOf(offer, { ...shown, hour: shown.hour ?? 'day' })
	if (scene === undefined) return null
	const at = (of: Cut, hour: Scene['hour']) => `${pictures}?${pictureQuery({ ...shown, hour, cut: of })}`
	const hour = shown.hour ?? 'day'
	const turns = shown.hour === null && hasLights(scene)
	return (
		<picture>
			{turns && <source media={`${phone} and ${dusk}`} srcSet={at(cut.phone, 'evening')} />}
			{turns && <source media={dusk} srcSet={at(cut.wide, 'evening')} />}
			<source media={phone} srcSet={at(cut.phone, hour)} />
			<img
				src={at(cut.wide, hour)}
				alt={name === undefined ? '' : `${name}. ${describeScene(scene)}`}
				className={`block w-full ${className}`}
				loading={isFirst ? 'eager' : 'lazy'}
				decoding="async"
			/>
		</picture>
	)
}
