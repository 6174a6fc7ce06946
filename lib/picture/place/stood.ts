import { windowTrimCm } from '../front/window'
import { tilt } from '../pen/pen'
import { aboveRimCm, type Pot } from '../planting/above-rim'
import { habitOf } from '../planting/habit'
import type { ScenePot } from '../scene'
import { type Body, bodyOf, soundPot } from '../vessel/body'

/** A pot in its place: its foot's middle at (`x`, `y`) on paper, in cm. */
export type Stood = {
	readonly pot: ScenePot
	readonly body: Body
	readonly x: number
	readonly y: number
	/** Half of the room that it takes with what grows in it. */
	readonly elbow: number
	/** Height of its highest tip above the rim. */
	readonly tip: number
	readonly isHung: boolean
	/** The how manieth of its place. */
	readonly which: number
}

export type Sized = Omit<Stood, 'x' | 'y'>

/** Before a wall a pot stands close to it; one that is seen all round stands a step away. */
const clearCm: Record<ScenePot['stands'], number> = { 'all round': 26, 'against a wall': 6, 'in a corner': 5 }

const deepest = ({ topDepth, bottomDepth }: Body) => Math.max(topDepth, bottomDepth)

export const footY = (pot: ScenePot, body: Body): number => (clearCm[pot.stands] + deepest(body)) * tilt

/** How high the rim of a box hangs over the ground where there is room for it, in cm. */
const hungRimCm = 82

export const hungFootY = ({ height }: Body): number => -Math.max(hungRimCm - height, 18)

/** How far the glass begins over the rim of a box under a window. */
export const glassOverRimCm = ({ sillToGlassCm }: ScenePot): number =>
	Math.min(80, Math.max(8, sillToGlassCm !== null && Number.isFinite(sillToGlassCm) ? sillToGlassCm : 14))

const tipOf = (pot: ScenePot, sound: Pot): number => {
	const tips = pot.lines.flatMap((line) => (habitOf(line) === 'upright' ? [aboveRimCm(line, sound)] : []))
	const others = pot.lines.flatMap((line) =>
		['fanned', 'mound', 'standing'].includes(habitOf(line)) ? [(line.lengthCm ?? 30) * 0.7] : [],
	)
	return Math.max(4, ...tips, ...others)
}

const reachOf = ({ lines }: ScenePot): number => {
	const reaches = lines.flatMap((line) => {
		const habit = habitOf(line)
		if (habit === 'fanned' || habit === 'mound') return [(line.lengthCm ?? 30) * 0.42]
		return habit === 'hanging' ? [(line.lengthCm ?? 30) * 0.3] : []
	})
	return Math.min(34, Math.max(0, ...reaches))
}

export function sizedOf(pot: ScenePot, which: number, tone: (colour: ScenePot['colour']) => ScenePot['colour']): Sized {
	const body = bodyOf({ ...pot, colour: tone(pot.colour) })
	const isHung = pot.vessel.shape === 'window box'
	const wide = Math.max(body.top, body.bottom)
	const elbow = wide + reachOf(pot)
	return {
		pot,
		which,
		body,
		isHung,
		elbow: isHung ? Math.max(elbow, wide + windowTrimCm + 10) : elbow,
		tip: tipOf(pot, soundPot(pot, body)),
	}
}
