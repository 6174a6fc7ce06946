import type { DesignMaterial } from '@/lib/recipe/traits'
import { type Hex, hex } from '@/lib/units/hex'
import { id } from '@/lib/units/id'

const plain = {
	kind: 'fresh',
	piece: 'accent',
	role: 'accent',
	unit: 'stem',
	piecesPerUnit: 1,
	hazards: [],
	inStock: 0,
	form: 'globe',
	secondHex: null,
	lengthCm: 40,
	acrossCm: 8,
	had: [],
	lasts: [],
	zone: null,
	wants: [],
	spacingCm: null,
	rootBallLitres: null,
	kgEach: 0.1,
	watts: null,
	mostEndToEnd: null,
	regulated: '',
} as const

/** The `n`th material; an accent that may be used in any month, unless more is said. */
export const material = (n: number, name: string, colour: Hex | string, more: Partial<DesignMaterial> = {}) =>
	({
		...plain,
		id: id<'material'>(`00000000-0000-7000-8000-00000000c${String(n).padStart(3, '0')}`),
		name,
		hex: hex(colour),
		...more,
	}) satisfies DesignMaterial

const green = { piece: 'green', role: 'filler', form: 'short needle' } as const
const stem = { piece: 'branch', role: 'thriller', form: 'straight stems' } as const
const lasting = { kind: 'ornament' } as const

/** What a studio has for a winter. */
export const winter = {
	birch: material(1, 'white birch', '#d8d0c1', stem),
	dogwood: material(2, 'red dogwood', '#8f2c2f', stem),
	willow: material(3, 'curly willow', '#8c7147', stem),
	fir: material(4, 'noble fir', '#3d6147', green),
	boxwood: material(5, 'boxwood', '#4b6b3e', green),
	garland: material(6, 'magnolia garland', '#a79b7f', green),
	copper: material(7, 'copper globes', '#b4643a', { ...lasting, inStock: 38 }),
	brass: material(8, 'brass globes', '#bb9346', { ...lasting, inStock: 41 }),
	bone: material(9, 'bone globes', '#e9e2d2', { ...lasting, inStock: 24 }),
	plum: material(10, 'plum berries', '#6a2f4b', { kind: 'faux', inStock: 30 }),
	navy: material(11, 'navy bows', '#24365a', lasting),
	pewter: material(12, 'pewter globes', '#82868b', lasting),
	cones: material(13, 'sugar pine cones', '#6d5640', { ...lasting, form: 'cone' }),
	lights: material(14, 'warm lights', '#f3d9a0', { kind: 'light', piece: 'string', form: 'lights', inStock: 24 }),
	stakes: material(15, 'stakes', '#b79d6b', { kind: 'mechanics', role: 'mechanics', piece: 'none', form: 'unseen' }),
	tulips: material(16, 'rose tulips', '#b3596b', { kind: 'live', had: [3, 4], lasts: [4, 5] }),
} as const
