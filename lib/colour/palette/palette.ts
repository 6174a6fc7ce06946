import type { WallKind } from '../../container/site'
import type { DesignMaterial, Month } from '../../recipe/traits'
import type { Hex } from '../../units/hex'
import type { MaterialId } from '../../units/id'

export type SiteColour = { readonly name: string; readonly hex: Hex; readonly side: 'inside' | 'outside' }

/** What a palette takes its colours from, what it stands before, and what there is to make it of. */
export type PaletteAsk = {
	readonly site: readonly SiteColour[]
	readonly wall: { readonly kind: WallKind; readonly hex: Hex }
	readonly door: Hex | null
	readonly materials: readonly DesignMaterial[]
	/** In which it is put out. */
	readonly month: Month
}

/** A colour with its name, as a palette holds it before it is judged. */
export type Chip = { readonly name: string; readonly hex: Hex }

export type PaletteColour = Chip & {
	/** "echoes your door brass"; empty where it echoes nothing. */
	readonly echoes: string
	/** Of what it can be made, the leading material first; none where nothing comes near. */
	readonly materials: readonly MaterialId[]
}

/** Each from 0 to 1. */
export type Parts = {
	readonly echo: number
	readonly standing: number
	readonly spread: number
	readonly stock: number
}

export type Judged = {
	/** The first is the leading accent. */
	readonly colours: readonly PaletteColour[]
	readonly parts: Parts
	/** 0 to 1. */
	readonly score: number
	/** The score in sentences. */
	readonly words: readonly string[]
}

export type Palette = Judged & { readonly name: string }
