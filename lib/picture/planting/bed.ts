import { outline } from '../../container/outline'
import { tilt } from '../pen/pen'
import type { ScenePot } from '../scene'
import { type Body, innerOf, soundPot } from '../vessel/body'
import type { Pot } from './above-rim'

/** The opening in which things grow, in cm; its middle at x = 0, the rim at `rimY`. */
export type Bed = {
	readonly halfWidth: number
	readonly halfDepth: number
	readonly rimY: number
	readonly headspace: number
	readonly height: number
	/** At least twice as long as deep: planted along its front. */
	readonly isLong: boolean
	readonly stands: ScenePot['stands']
	/** The card, made sound: what heights are reckoned from. */
	readonly pot: Pot
	/** Hangs on a wall, so that nothing stops what grows over its rim. */
	readonly hangs: boolean
}

export function bedOf({ vessel, stands, sillToGlassCm }: ScenePot, body: Body): Bed {
	const { halfWidth, halfDepth } = innerOf(body)
	return {
		halfWidth,
		halfDepth,
		rimY: -body.height,
		headspace: body.headspace,
		height: body.height,
		isLong: !body.isRound && halfWidth >= 2 * halfDepth,
		stands,
		pot: soundPot({ vessel, sillToGlassCm }, body),
		hangs: vessel.shape === 'window box',
	}
}

/** A point over the bed on paper: across, up from the rim, towards the viewer. */
export const onPaper = ({ rimY }: Bed, x: number, up: number, near: number): readonly [number, number] => [
	x,
	rimY - up + near * tilt,
]

/** How far below the rim a foot can stand at `x` cm from the middle and not show beside the vessel: an urn's bowl ends early. */
export function roomCm(pot: Pot, x: number): number {
	const inside = Math.abs(x)
	const [rim, ...below] = outline(pot).toReversed()
	if (rim === undefined || rim.halfCm <= inside) return 0
	let last = rim
	for (const next of below) {
		if (next.halfCm < inside) {
			const part = (last.halfCm - inside) / (last.halfCm - next.halfCm)
			return rim.heightCm - (last.heightCm + (next.heightCm - last.heightCm) * part)
		}
		last = next
	}
	return rim.heightCm
}
