import type { SetPot, Setting } from '@/lib/recipe/check/setting'
import { usualCircuit } from '@/lib/recipe/check/setting'
import { reference } from '@/lib/recipe/grow/reference'

/** The reference pot in part shade, with an outlet, on firm ground. */
export const setPot: SetPot = {
	...reference,
	wall: 'resin',
	light: 'part',
	isWindy: false,
	isUnderEave: false,
	hasRoadSalt: false,
	sillToGlassCm: null,
	limitedWeight: 'none',
	vesselKg: null,
	outletNear: true,
}

/** A winter that goes in in November, in zone 6b. */
export const setting: Setting = {
	pot: setPot,
	quarter: 'winter',
	month: 11,
	zone: 6.5,
	circuit: usualCircuit,
	daysHung: 75,
	lengths: 'cm',
}

type More = Partial<Omit<Setting, 'pot'>> & { readonly pot?: Partial<SetPot> }

export const where = ({ pot, ...more }: More): Setting => ({ ...setting, ...more, pot: { ...setPot, ...pot } })
