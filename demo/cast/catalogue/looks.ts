import type { Form } from '@/lib/recipe/look'
import type { LightNeed } from '@/lib/recipe/traits'
import type { MaterialKey } from './materials'

type Months = readonly [from: number, to: number]
type Look = {
	readonly form: Form
	readonly second?: string
	readonly length?: number
	readonly across?: number
	readonly had?: Months
	readonly lasts?: Months
	readonly zone?: number
	readonly needs?: LightNeed
	readonly spacing?: number
	readonly rootBall?: number
	readonly kg?: number
	readonly watts?: number
	readonly endToEnd?: number
	readonly regulated?: string
}

/** Cut for the winter: had from late autumn, good until the thaw. */
const cut = { had: [10, 1], lasts: [11, 2] } as const
const stored = { had: [1, 12], lasts: [1, 12] } as const
const autumn = { had: [8, 10], lasts: [9, 11], needs: 'sun or part' } as const

/** What a piece of each looks like, in cm and kg; plausible figures of ours. */
export const looks: Readonly<Record<MaterialKey, Look>> = {
	whiteBirch: { ...cut, form: 'straight stems', length: 122, across: 3, kg: 0.12 },
	contortedHazel: { ...cut, form: 'twisting stems', length: 110, across: 26, kg: 0.1 },
	redDogwood: { ...cut, form: 'straight stems', length: 107, across: 2, kg: 0.06 },
	goldDogwood: { ...cut, form: 'straight stems', length: 107, across: 2, kg: 0.06 },
	curlyWillow: { ...cut, form: 'twisting stems', length: 118, across: 22, kg: 0.09 },

	nobleFir: { ...cut, form: 'short needle', length: 50, across: 24, kg: 0.14 },
	silverFir: { ...cut, form: 'short needle', length: 46, across: 24, kg: 0.13 },
	blueSpruce: { ...cut, form: 'short needle', length: 42, across: 20, kg: 0.14 },
	whitePine: { ...cut, form: 'long needle', length: 46, across: 26, kg: 0.05 },
	juniper: { ...cut, form: 'scale leaf', second: '#3d4d66', length: 40, across: 20, kg: 0.11 },
	boxwood: {
		...cut,
		form: 'small leaf',
		length: 36,
		across: 20,
		kg: 0.09,
		regulated: 'box tree moth: some states forbid boxwood from elsewhere',
	},
	magnolia: { ...cut, form: 'broad leaf', second: '#7a5534', length: 46, across: 30, kg: 0.2 },
	holly: { ...cut, form: 'small leaf', second: '#d9dcae', length: 38, across: 20, kg: 0.1 },
	yew: { ...cut, form: 'short needle', length: 40, across: 20, kg: 0.1 },
	magnoliaGarland: { ...stored, form: 'broad leaf', second: '#8a6b48', length: 60, across: 30, kg: 0.5 },
	cedar: { ...cut, form: 'flat fan', length: 50, across: 26, kg: 0.1 },
	eucalyptus: { had: [10, 1], lasts: [11, 1], form: 'trailing', length: 48, across: 14, kg: 0.08 },

	winterberry: { ...cut, form: 'berries', second: '#5d5148', length: 60, across: 18, kg: 0.09 },
	plumBerries: { ...stored, form: 'berries', second: '#4d3b33', length: 46, across: 14, kg: 0.04 },
	frostBerries: { ...stored, form: 'berries', second: '#8d9799', length: 46, across: 14, kg: 0.04 },
	violetBerries: { ...stored, form: 'berries', second: '#4d4454', length: 46, across: 14, kg: 0.04 },
	copperGlobes: { ...stored, form: 'cluster', length: 34, across: 18, kg: 0.15 },
	brassGlobes: { ...stored, form: 'cluster', length: 34, across: 18, kg: 0.15 },
	boneGlobes: { ...stored, form: 'cluster', length: 34, across: 18, kg: 0.15 },
	frostGlobes: { ...stored, form: 'cluster', length: 34, across: 18, kg: 0.15 },
	pewterGlobes: { ...stored, form: 'cluster', length: 34, across: 18, kg: 0.15 },
	cones: { ...stored, form: 'cone', length: 17, across: 8, kg: 0.12 },
	navyBow: { ...stored, form: 'ribbon', length: 32, across: 26, kg: 0.05 },
	rustBow: { ...stored, form: 'ribbon', length: 32, across: 26, kg: 0.05 },
	roseBow: { ...stored, form: 'ribbon', length: 32, across: 26, kg: 0.05 },
	violetBow: { ...stored, form: 'ribbon', length: 32, across: 26, kg: 0.05 },
	ironLantern: { ...stored, form: 'globe', length: 42, across: 20, kg: 2.4 },
	warmLights: {
		...stored,
		form: 'lights',
		second: '#3a4034',
		length: 500,
		across: 1,
		kg: 0.2,
		watts: 4.8,
		endToEnd: 20,
	},
	stakes: { ...stored, form: 'unseen', length: 60, across: 1, kg: 0.02 },

	carex: { ...autumn, form: 'grass', length: 45, across: 45, zone: 6, spacing: 35, rootBall: 3.8, kg: 2.6 },
	fountainGrass: {
		...autumn,
		form: 'plume',
		second: '#6b3f49',
		length: 85,
		across: 60,
		zone: 9,
		needs: 'sun',
		spacing: 50,
		rootBall: 3.8,
		kg: 2.8,
	},
	kale: {
		...autumn,
		had: [9, 11],
		form: 'rosette',
		second: '#5d7362',
		length: 28,
		across: 30,
		zone: 8,
		spacing: 25,
		rootBall: 1,
		kg: 0.8,
	},
	heuchera: {
		...autumn,
		had: [4, 11],
		form: 'foliage',
		length: 30,
		across: 35,
		zone: 4,
		needs: 'part',
		spacing: 30,
		rootBall: 1.5,
		kg: 1.2,
	},
	sage: {
		...autumn,
		had: [4, 10],
		form: 'foliage',
		length: 35,
		across: 35,
		zone: 6,
		needs: 'sun',
		spacing: 30,
		rootBall: 1.5,
		kg: 1.2,
	},
	mums: {
		...autumn,
		form: 'round flowers',
		second: '#4e6a45',
		length: 40,
		across: 45,
		zone: 6,
		spacing: 38,
		rootBall: 3.8,
		kg: 2.8,
	},
	quinceMums: {
		...autumn,
		form: 'round flowers',
		second: '#4e6a45',
		length: 40,
		across: 45,
		zone: 6,
		spacing: 38,
		rootBall: 3.8,
		kg: 2.8,
	},
	ornamentalPepper: {
		...autumn,
		form: 'berries',
		second: '#4a5a3a',
		length: 30,
		across: 25,
		zone: 10,
		needs: 'sun',
		spacing: 22,
		rootBall: 1,
		kg: 0.8,
	},
	ivy: {
		...autumn,
		had: [3, 11],
		form: 'trailing',
		length: 45,
		across: 25,
		zone: 5,
		needs: 'part or shade',
		spacing: 25,
		rootBall: 0.8,
		kg: 0.6,
		regulated: 'English ivy is invasive in some states',
	},
	jenny: {
		...autumn,
		had: [3, 10],
		form: 'trailing',
		length: 35,
		across: 25,
		zone: 4,
		spacing: 22,
		rootBall: 0.8,
		kg: 0.6,
	},
	wheat: { had: [8, 11], lasts: [9, 11], form: 'seed head', length: 80, across: 4, kg: 0.02 },
	gourds: { had: [9, 11], lasts: [9, 11], form: 'pumpkin', second: '#6d7a3c', length: 12, across: 14, kg: 0.4 },
	willowBalls: { ...stored, form: 'globe', length: 20, across: 16, kg: 0.1 },
}
