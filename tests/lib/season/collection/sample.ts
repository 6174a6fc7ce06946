import type { LibraryRecipe } from '@/lib/proposal/design/propose'
import { emptyDraft } from '@/lib/proposal/draft'
import type { Facts } from '@/lib/proposal/facts'
import type { Ground } from '@/lib/proposal/start/fresh'
import type { Collection, Design } from '@/lib/season/collection/collection'
import { hex } from '@/lib/units/hex'
import { id } from '@/lib/units/id'
import { front, houseWinter, winterMaterials } from '../../proposal/design/house-winter'
import { materialId, facts as plain } from '../../proposal/sample'

export const recipeId = (n: number) => id<'recipe'>(`00000000-0000-7000-8000-00000000e00${n}`)

const line = (n: number, ...[role, holding, grows]: readonly [Roles, 'sold' | 'lent', Grown]) => ({
	...{ material: materialId(n), role, holding, grows },
})
type Roles = LibraryRecipe['lines'][number]['role']
type Grown = LibraryRecipe['lines'][number]['grows']

/** A pot's recipe, a box's, and one in which nothing is yet. */
export const recipes: readonly LibraryRecipe[] = [
	{ ...houseWinter, id: recipeId(1) },
	{
		id: recipeId(2),
		name: 'Along the sill',
		quarter: 'winter',
		lines: [
			line(30, 'thriller', 'sold', { way: 'stems', count: 5 }),
			line(31, 'filler', 'sold', { way: 'greens', count: 16 }),
			line(28, 'filler', 'sold', { way: 'greens', count: 6 }),
			line(29, 'spiller', 'sold', { way: 'rim', count: 7 }),
			line(27, 'accent', 'lent', { way: 'faces', count: 1 }),
		],
	},
	{ id: recipeId(3), name: 'Not written yet', quarter: 'winter', lines: [] },
]

const design = (key: string, name: string, ...chips: readonly (readonly [string, string])[]): Design => ({
	key,
	name,
	palette: chips.map(([called, colour]) => ({ name: called, hex: hex(colour) })),
	recipes: { pot: recipeId(1), box: recipeId(2), bowl: null },
})

export const collection: Collection = {
	v: 1,
	title: 'Winter at your door',
	letter: 'Held against your wall.',
	designs: [
		design('d1', 'Plum dusk', ['Plum', '#6a2f4b'], ['Pewter', '#82868b']),
		design('d2', 'Bell brass', ['Brass', '#bb9346'], ['Dogwood red', '#8f2c2f']),
		design('d3', 'Rose garden', ['Rose', '#b3596b'], ['Twig gold', '#cdb05a']),
		design('d4', 'Grey morning', ['Pewter', '#82868b'], ['Birch', '#d8d0c1']),
	],
	extras: [{ key: 'e1', name: 'A mid-winter refresh', words: 'Tidied and watered.', minutes: 40, lines: [] }],
}

export const facts: Facts = { ...plain, materials: new Map(winterMaterials.map((each) => [each.id, each])) }

/** A client of two places and three containers, whose draft holds nothing but the season's dates. */
export const ground: Ground = { draft: emptyDraft({ from: null, to: null, answerBy: null }), facts, site: front }
