import type { SceneLine } from './scene'

/** Numbers from 0 to 1, the same every time from the same seed. */
export type Dice = () => number

/**
 * One piece drawn once and used many times: its foot at the origin, growing up (towards −y), in cm at its natural size.
 * `svg` is the inside of a `<symbol>` or `<g>`: paths and shapes, no id.
 */
export type Piece = {
	readonly svg: string
	/** Reach above the foot; of what hangs, below it. */
	readonly heightCm: number
	/** Twice the farthest reach to a side: the piece lies between −widthCm / 2 and widthCm / 2. */
	readonly widthCm: number
	/** Grows down from the rim (towards +y) instead of up. */
	readonly hangs: boolean
	/** Bends to the right as it stands: mirror it where it shall bend to the left. */
	readonly leans: boolean
}

/** Two to four variants of one piece of a line. */
export type DrawPiece = (line: SceneLine, dice: Dice) => readonly Piece[]
