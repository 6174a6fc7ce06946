import { type Hex, hex } from '../../units/hex'
import { shade } from '../pen/shade'
import type { Piece } from '../piece'
import type { SceneLine } from '../scene'
import { drawnOnce } from './drawn-once'
import type { Hand } from './hand'

/** A piece under the id by which it is used. */
export type Cut = Piece & { readonly id: string }

/** The colours of a piece, each changed by `tone`. */
const recoloured = (svg: string, tone: (colour: Hex) => Hex): string =>
	svg.replaceAll(/#[0-9a-f]{6}/g, (colour) => tone(hex(colour)))

/** So many characters the drawings of a line may have: what is finely drawn has fewer variants, and is mirrored and turned. */
export const roomFor = (lines: number): number => (lines > 10 ? 3000 : 5600)

/** Pieces of a line as the hour shows them, each a little lighter or darker than the last, by steps of OKLCH lightness. */
export function stockOf(
	line: SceneLine,
	steps: readonly number[],
	{ isLit, room, pen: { defs, light } }: Hand,
): readonly Cut[] {
	const toned = isLit ? light.toneAmongLights : light.tone
	const pieces = drawnOnce(line)
	const variants = Math.max(1, Math.floor(room / (pieces[0]?.svg.length ?? 1)))
	return steps.slice(0, variants).flatMap((by, index) => {
		const piece = pieces[index % Math.max(1, pieces.length)]
		if (piece === undefined) return []
		const svg = recoloured(piece.svg, (colour) => shade(toned(colour), by))
		return { ...piece, id: defs.add((id) => `<g id="${id}">${svg}</g>`) }
	})
}
