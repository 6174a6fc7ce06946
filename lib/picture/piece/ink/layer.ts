import type { Hex } from '../../../units/hex'
import type { Shape } from './shape'
import { wound } from './wound'

/** Shapes of one colour: filled, or drawn with a pen of that width. */
export type Layer = {
	readonly colour: Hex
	readonly penCm: number | null
	/** Of a pen that lifts: how far it draws (0: a dot, round; else with square ends) and how far it lifts. */
	readonly dashCm: readonly [on: number, off: number] | null
	readonly shapes: readonly Shape[]
}

export const fill = (colour: Hex, shapes: readonly Shape[]): Layer => ({
	colour,
	penCm: null,
	dashCm: null,
	shapes: shapes.map(wound),
})

export const pen = (colour: Hex, penCm: number, shapes: readonly Shape[]): Layer => ({
	colour,
	penCm,
	dashCm: null,
	shapes,
})

export const dashes = (
	colour: Hex,
	penCm: number,
	dashCm: readonly [number, number],
	shapes: readonly Shape[],
): Layer => ({
	colour,
	penCm,
	dashCm,
	shapes,
})
