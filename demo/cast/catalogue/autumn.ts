import { branch, plant, trim } from './shape'

/** Name, colour, pack size and its price in cents; plausible wholesale figures of ours. */
export const autumnMaterials = {
	carex: plant('bronze sedge', '#9a6b3f', 1, 1390, { role: 'thriller' }),
	fountainGrass: plant('purple fountain grass', '#6f3f4f', 1, 1650, { role: 'thriller' }),
	kale: plant('ornamental kale', '#8a5a80', 6, 2980),
	heuchera: plant('coral bells', '#5c2b38', 6, 4240),
	sage: plant('silver sage', '#8a9a78', 6, 3360),
	mums: plant('russet chrysanthemum', '#8f4a28', 1, 925, { hazards: ['poisonous to pets'] }),
	quinceMums: plant('quince chrysanthemum', '#c8942f', 1, 925, { hazards: ['poisonous to pets'] }),
	ornamentalPepper: plant('ornamental pepper', '#b0442c', 6, 3480, { hazards: ['poisonous to people'] }),
	ivy: plant('trailing ivy', '#4f6b45', 10, 3350, {
		role: 'spiller',
		hazards: ['poisonous to people', 'poisonous to pets'],
	}),
	jenny: plant('creeping jenny', '#a9b04e', 10, 3150, { role: 'spiller' }),
	wheat: branch('bearded wheat', '#c9a95c', 20, 1890),
	gourds: trim('small gourds', '#c07a32', 20, 2890, { kind: 'fresh', supplier: 'plants', freightPercent: 0 }),
	willowBalls: trim('woven willow balls', '#7d5f45', 6, 7800, { stock: { quantity: 70, usesBefore: 3 } }),
} as const
