import type { Hazard } from '@/lib/recipe/material'
import { branch, faux, fixing, globes, green, string, trim } from './shape'

const poison: readonly Hazard[] = ['poisonous to people', 'poisonous to pets']

/** Made in a season before and kept whole: nothing is to be made again. */
const kept = (quantity: number, usesBefore: number) =>
	({ piece: 'cluster kept', stock: { quantity, usesBefore } }) as const

/** Name, colour, pack size and its price in cents; plausible wholesale figures of ours. */
export const winterMaterials = {
	whiteBirch: branch('white birch', '#d8d0c1', 10, 2250),
	contortedHazel: branch('contorted hazel', '#6c513f', 5, 1720),
	redDogwood: branch('red dogwood', '#8f2c2f', 10, 1980),
	goldDogwood: branch('gold-twig dogwood', '#cdb05a', 10, 2050),
	curlyWillow: branch('curly willow', '#8c7147', 10, 1840),

	nobleFir: green('noble fir', '#3d6147', 25, 2060),
	silverFir: green('silver fir', '#5e7f6e', 25, 1940),
	blueSpruce: green('blue spruce', '#5f7f86', 20, 1780),
	whitePine: green('white pine', '#4f7350', 5, 2950, { unit: 'kg', piecesPerUnit: 20 }),
	juniper: green('berried juniper', '#5c7076', 20, 1830),
	boxwood: green('boxwood', '#4b6b3e', 30, 2480, { hazards: poison }),
	magnolia: green('magnolia', '#4a4a2c', 10, 1480),
	holly: green('variegated holly', '#6f8460', 20, 2150, { hazards: poison }),
	yew: green('yew', '#2f4a35', 25, 1760, { hazards: poison }),
	magnoliaGarland: green('preserved magnolia garland', '#a79b7f', 5, 4700, {
		unit: 'piece',
		supplier: 'trimmings',
		freightPercent: 12,
	}),
	cedar: green('cedar', '#566b3d', 20, 1560, { role: 'spiller' }),
	eucalyptus: green('trailing eucalyptus', '#93a698', 10, 1420, { role: 'spiller', hazards: ['poisonous to pets'] }),

	winterberry: trim('winterberry', '#b02430', 10, 2680, {
		kind: 'fresh',
		unit: 'stem',
		supplier: 'stems',
		freightPercent: 0,
		hazards: poison,
	}),
	plumBerries: faux('faux plum berry', '#6a2f4b', 12, 3480, { stock: { quantity: 30, usesBefore: 1 } }),
	frostBerries: faux('faux frost berry', '#cfdde2', 12, 3360),
	violetBerries: faux('faux violet berry', '#6b5796', 12, 3420),
	copperGlobes: globes('clusters of copper globes', '#b4643a', 6, 5450, kept(38, 3)),
	brassGlobes: globes('clusters of brass globes', '#bb9346', 6, 5350, kept(41, 4)),
	boneGlobes: globes('clusters of bone globes', '#e9e2d2', 6, 5200, kept(24, 1)),
	frostGlobes: globes('clusters of frost globes', '#dbe6ea', 6, 5250, kept(20, 2)),
	pewterGlobes: globes('clusters of pewter globes', '#82868b', 6, 5300, kept(9, 5)),
	cones: trim('sugar pine cones', '#6d5640', 12, 2070, { stock: { quantity: 160, usesBefore: 4 } }),
	navyBow: trim('navy velvet bows', '#24365a', 8, 2640),
	rustBow: trim('rust linen bows', '#a5512b', 8, 2520),
	roseBow: trim('rose velvet bows', '#b3596b', 8, 2680),
	violetBow: trim('violet velvet bows', '#6b5796', 8, 2660),
	ironLantern: trim('iron lanterns', '#2f3030', 1, 0, {
		freightPercent: 0,
		stock: { quantity: 2, usesBefore: 4, client: 'inn' },
	}),
	warmLights: string('warm light strings', '#f3d9a0', 1, 1980, { stock: { quantity: 24, usesBefore: 1 } }),
	stakes: fixing('bamboo stakes', '#b79d6b', 100, 1450),
} as const
