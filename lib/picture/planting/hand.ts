import type { Pen } from '../pen/pen'
import type { Bed } from './bed'

/** With what a pot is planted. */
export type Hand = {
	readonly bed: Bed
	/** Lights hang in it. */
	readonly isLit: boolean
	/** The how manieth of its place. */
	readonly which: number
	/** Characters that the drawings of one line may have. */
	readonly room: number
	readonly pen: Pen
}
