import type { Holding, Role } from '@/lib/recipe/material'
import type { MaterialKey } from './materials'
import type { RecipeKey } from './recipes'

type CastDesign = {
	readonly name: string
	readonly palette: readonly (readonly [name: string, hex: string])[]
	readonly pot: RecipeKey
	readonly box: RecipeKey | null
}
type CastCollection = {
	readonly title: string
	readonly letter: string
	readonly designs: readonly CastDesign[]
	readonly extras: readonly {
		readonly name: string
		readonly words: string
		readonly minutes: number
		readonly lines: readonly (readonly [material: MaterialKey, role: Role, holding: Holding, count: number])[]
	}[]
}

/** Four house designs for the winter, from which the studio drafts for whoever is not begun. */
export const winterCollection: CastCollection = {
	title: 'Winter at your door',
	letter:
		'These are the winter’s house designs that suit your front best: I have held each of them against your wall and let it grow to your own containers. Tell me which one is yours, or what you would have otherwise, and the evergreens go in before the ground freezes.',
	designs: [
		{
			name: 'Kiln and sloe',
			palette: [
				['Kiln copper', '#b4643a'],
				['Sloe plum', '#6a2f4b'],
				['Birch bark', '#d8d0c1'],
				['Fir', '#3d6147'],
			],
			pot: 'copperAndPlum',
			box: null,
		},
		{
			name: 'Bell brass',
			palette: [
				['Ship brass', '#bb9346'],
				['Night navy', '#24365a'],
				['Twig gold', '#cdb05a'],
				['Box green', '#4b6b3e'],
			],
			pot: 'brassAndNavy',
			box: null,
		},
		{
			name: 'First frost',
			palette: [
				['Frost', '#dbe6ea'],
				['Violet', '#6b5796'],
				['Birch bark', '#d8d0c1'],
				['Spruce', '#5f7f86'],
			],
			pot: 'frostAndViolet',
			box: 'petSafeFrost',
		},
		{
			name: 'Bone and bark',
			palette: [
				['Bone', '#e9e2d2'],
				['Cone brown', '#6d5640'],
				['Birch bark', '#d8d0c1'],
				['Silver fir', '#5e7f6e'],
			],
			pot: 'boneAndCharcoal',
			box: 'magnoliaWindow',
		},
	],
	extras: [
		{
			name: 'A string of warm lights',
			words: 'Wound low through the greens, on from dusk; they come down with the rest.',
			minutes: 0,
			lines: [['warmLights', 'accent', 'lent', 1]],
		},
		{
			name: 'A mid-winter refresh',
			words: 'Half-way through we tidy, turn and water, and swap what has browned.',
			minutes: 45,
			lines: [],
		},
	],
}
