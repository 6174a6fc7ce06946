import type { DraftOption } from '@/lib/proposal/draft'
import { hex } from '@/lib/units/hex'

type Chip = readonly [name: string, hex: string]

/** The house palettes; what a chip echoes is said for each wall. */
export const palettes = {
	copperAndPlum: [
		['Kiln copper', '#b4643a'],
		['Sloe plum', '#6a2f4b'],
		['Birch bark', '#d8d0c1'],
		['Fir', '#3d6147'],
	],
	brassAndNavy: [
		['Ship brass', '#bb9346'],
		['Night navy', '#24365a'],
		['Twig gold', '#cdb05a'],
		['Box green', '#4b6b3e'],
	],
	boneAndCharcoal: [
		['Bone', '#e9e2d2'],
		['Charcoal', '#34373a'],
		['Cone brown', '#6d5640'],
	],
	rustAndMoss: [
		['Rust', '#a5512b'],
		['Moss', '#6b7440'],
		['Hazel bark', '#6c513f'],
		['Juniper', '#5c7076'],
	],
	frostAndViolet: [
		['Frost', '#dbe6ea'],
		['Violet', '#6b5796'],
		['Spruce', '#5f7f86'],
	],
	roseAndPewter: [
		['Dusk rose', '#b3596b'],
		['Pewter', '#82868b'],
		['Dogwood red', '#8f2c2f'],
		['Pine', '#4f7350'],
	],
	harvest: [
		['Quince', '#c8942f'],
		['Russet', '#8f4a28'],
		['Sage', '#8a9a78'],
	],
	heather: [
		['Heather', '#8a5a80'],
		['Silver', '#b7bdb9'],
		['Wine leaf', '#5c2b38'],
	],
} as const satisfies Record<string, readonly Chip[]>

export type PaletteKey = keyof typeof palettes

/** A palette's chips beside what each takes up at one building, in order; no word where there is none. */
export const paint = (palette: PaletteKey, ...echoes: readonly string[]): DraftOption['palette'] =>
	palettes[palette].map(([name, colour], index) => ({ name, hex: hex(colour), echoes: echoes[index] ?? '' }))
