import type { CastRecipe } from './recipe-shape'

export const autumnRecipes = {
	sedgeAndKale: {
		name: 'Sedge and kale',
		quarter: 'autumn',
		note: 'Kale colours up after the first cold night, not before.',
		lines: [
			['carex', 'thriller', 'sold', [1, 1, 3, 2, 3]],
			['kale', 'filler', 'sold', [2, 3, 7, 4, 7]],
			['heuchera', 'filler', 'sold', [2, 3, 5, 3, 5]],
			['ivy', 'spiller', 'sold', [2, 3, 6, 3, 5]],
			['gourds', 'accent', 'sold', [3, 3, 5, 3, 5]],
			['willowBalls', 'accent', 'lent', [1, 3, 3, 3, 3]],
		],
	},
	wheatAndRusset: {
		name: 'Wheat and russet',
		quarter: 'autumn',
		note: 'Russet fades in full sun; give those doors the quince.',
		lines: [
			['wheat', 'thriller', 'sold', [11, 15, 27, 11, 21]],
			['mums', 'filler', 'sold', [2, 3, 6, 3, 6]],
			['sage', 'filler', 'sold', [2, 3, 6, 3, 5]],
			['jenny', 'spiller', 'sold', [2, 3, 6, 3, 5]],
			['gourds', 'accent', 'sold', [3, 5, 7, 3, 5]],
			['willowBalls', 'accent', 'lent', [1, 3, 3, 3, 3]],
		],
	},
	quinceAndPepper: {
		name: 'Quince and pepper',
		quarter: 'autumn',
		note: 'Peppers drop after a frost; have kale to follow.',
		lines: [
			['fountainGrass', 'thriller', 'sold', [1, 1, 3, 2, 3]],
			['quinceMums', 'filler', 'sold', [2, 3, 6, 3, 6]],
			['ornamentalPepper', 'filler', 'sold', [2, 3, 5, 3, 5]],
			['jenny', 'spiller', 'sold', [2, 4, 6, 4, 5]],
			['willowBalls', 'accent', 'lent', [1, 3, 3, 3, 3]],
		],
	},
} as const satisfies Record<string, CastRecipe>
