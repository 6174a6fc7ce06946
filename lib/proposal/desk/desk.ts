import type { SeenStrip } from '../../colour/eyes/eye-words'
import type { PotState } from '../design/told'
import type { Problem } from '../problem'

/** One line of a costing with its working: "14 stems × 1.10 × $18.40 ÷ 10 × 2.2". */
export type DeskLine = { readonly what: string; readonly how: string; readonly price: string; readonly cost: string }
export type DeskPart = {
	readonly name: string
	readonly price: string
	readonly cost: string
	readonly lines: readonly DeskLine[]
}

/** What the designer sees beside an option: the client's quote, and the costing that no client sees. */
export type DeskOption = {
	readonly key: string
	readonly quote: {
		readonly rows: readonly { readonly label: string; readonly amount: string }[]
		readonly total: string
		readonly due: string
	}
	readonly cost: string
	readonly margin: string
	readonly hours: string
	/** Why the margin is below the floor and what would mend it; empty when it is not. */
	readonly mend: readonly string[]
	readonly parts: readonly DeskPart[]
	/** What the palette is worth before the wall, in sentences. */
	readonly words: readonly string[]
	/** Its palette as eyes without one kind of cones see it, and what runs together for them, in sentences. */
	readonly seen: { readonly strips: readonly SeenStrip[]; readonly says: readonly string[] }
	readonly pots: readonly PotState[]
	/** One picture a place: a whole SVG document with its description. */
	readonly pictures: readonly DeskPicture[]
}

export type DeskPicture = { readonly place: string; readonly name: string; readonly svg: string; readonly says: string }

export type Desk = {
	readonly options: readonly DeskOption[]
	readonly extras: readonly { readonly name: string; readonly price: string; readonly cost: string }[]
	readonly problems: readonly Problem[]
}
