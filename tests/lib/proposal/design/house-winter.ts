import type { LibraryRecipe } from '@/lib/proposal/design/propose'
import type { Material } from '@/lib/proposal/facts'
import { hex } from '@/lib/units/hex'
import { first, materialId, materials } from '../sample'

const named = (n: number, base: number, name: string, colour: string, more: Partial<Material> = {}): Material => ({
	...first(materials.slice(base - 1)),
	id: materialId(n),
	name,
	hex: hex(colour),
	had: [10, 11, 12],
	lasts: [11, 12, 1, 2],
	...more,
})
const stems = { role: 'thriller', piece: 'branch', form: 'straight stems', lengthCm: 110 } as const
const balls = { role: 'accent', form: 'cluster', kind: 'ornament', piece: 'cluster kept' } as const
const green = { role: 'filler', hazards: [] } as const

/** A small winter catalogue: what palettes are made of, and the recipe that they dress. */
export const winterMaterials: readonly Material[] = [
	named(21, 1, 'red dogwood', '#8f2c2f', stems),
	named(22, 1, 'gold dogwood', '#cdb05a', stems),
	named(23, 1, 'white birch', '#d8d0c1', stems),
	named(30, 1, 'contorted hazel', '#6c513f', { ...stems, form: 'twisting stems', lengthCm: 104 }),
	named(24, 3, 'brass globes', '#bb9346', balls),
	named(25, 3, 'pewter globes', '#82868b', balls),
	named(26, 3, 'plum globes', '#6a2f4b', balls),
	named(27, 3, 'rose globes', '#b3596b', balls),
	named(28, 4, 'noble fir', '#3d6147', { ...green, form: 'short needle' }),
	named(31, 4, 'white pine', '#4f7350', { ...green, form: 'long needle' }),
	named(29, 4, 'cedar', '#566b3d', { ...green, role: 'spiller', form: 'flat fan' }),
]

export const houseWinter: LibraryRecipe = {
	id: 'r',
	name: 'House winter',
	quarter: 'winter',
	lines: [
		{ material: materialId(21), role: 'thriller', holding: 'sold', grows: { way: 'stems', count: 12 } },
		{ material: materialId(28), role: 'filler', holding: 'sold', grows: { way: 'greens', count: 12 } },
		{ material: materialId(31), role: 'filler', holding: 'sold', grows: { way: 'greens', count: 8 } },
		{ material: materialId(29), role: 'spiller', holding: 'sold', grows: { way: 'rim', count: 9 } },
		{ material: materialId(24), role: 'accent', holding: 'lent', grows: { way: 'faces', count: 1 } },
	],
}

/** Colours of the front. */
export const front = [
	{ name: 'door brass', hex: hex('#b08d4a'), side: 'outside' },
	{ name: 'red door', hex: hex('#8a2a30'), side: 'outside' },
] as const
