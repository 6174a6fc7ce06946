import type { Limit, Vessel, WallMaterial } from './card'
import { bodyCm, inner } from './inner'
import { outline } from './outline'
import { soilCm3 } from './soil'
import { betweenCm3, prismatoidCm3 } from './solid'

/** What the walls weigh in kg per litre: rounded from tables of building materials, for an estimate (common practice). */
export const wallKgPerLitre: Record<WallMaterial, number> = {
	metal: 7.85,
	resin: 0.95,
	wood: 0.5,
	terracotta: 1.9,
	'cast stone': 2.3,
}

export const mixes = ['fresh', 'aged', 'heaviest'] as const
export type Mix = (typeof mixes)[number]

/** Potting mix in kg per litre, out of the bag and drained after watering; `heaviest` where weight is limited (common practice). */
export const mixKgPerLitre: Record<Mix, { readonly dry: number; readonly wet: number }> = {
	fresh: { dry: 0.15, wet: 0.75 },
	aged: { dry: 0.4, wet: 1 },
	heaviest: { dry: 0.65, wet: 1.3 },
}

/** To be on the safe side where weight is limited. */
export const mixWhere = (limit: Limit): Mix => (limit === 'none' ? 'aged' : 'heaviest')

/** The foot and stem of an urn, as a shell of the wall's thickness. */
function footCm3(vessel: Vessel): number {
	const below = outline(vessel).filter(({ heightCm }) => heightCm <= vessel.heightCm - bodyCm(vessel))
	const ring = (half: number) => Math.PI * (half ** 2 - Math.max(0, half - vessel.wallCm) ** 2)
	return below.slice(1).reduce((sum, level, n) => {
		const before = below[n] ?? level
		const half = (at: number) => {
			const span = level.heightCm - before.heightCm || 1
			return before.halfCm + ((level.halfCm - before.halfCm) * (at - before.heightCm)) / span
		}
		return sum + prismatoidCm3((at) => ring(half(at)), before.heightCm, level.heightCm)
	}, 0)
}

/** The walls and the floor, in cm³: the body without its hollow, and the foot of an urn. */
export function wallCm3(vessel: Vessel): number {
	const { shape, heightCm: hollowCm, ...within } = { shape: vessel.shape, ...inner(vessel) }
	const outer = inner({ ...vessel, wallCm: 0 })
	const body = betweenCm3({ shape, ...outer }, 0, bodyCm(vessel))
	const hollow = betweenCm3({ shape, ...within, heightCm: hollowCm }, 0, hollowCm)
	return Math.max(0, body - hollow) + (shape === 'urn' ? footCm3(vessel) : 0)
}

export type Weighed = {
	readonly vesselKg: number
	/** Nobody has weighed it: its walls × what such walls weigh. */
	readonly isEstimated: boolean
	/** Whole container in kg, with its contents. */
	readonly dryKg: number
	readonly wetKg: number
}

type Weighing = { readonly wall: WallMaterial; readonly vesselKg: number | null; readonly mix: Mix }

/** A container in kg with dry and with wet mix, `contentsKg` of plants and trimmings in it. */
export function weigh(vessel: Vessel, { wall, vesselKg, mix }: Weighing, contentsKg: number): Weighed {
	const own = vesselKg ?? (wallCm3(vessel) * wallKgPerLitre[wall]) / 1000
	const litres = soilCm3(vessel) / 1000
	const { dry, wet } = mixKgPerLitre[mix]
	return {
		vesselKg: own,
		isEstimated: vesselKg === null,
		dryKg: own + litres * dry + contentsKg,
		wetKg: own + litres * wet + contentsKg,
	}
}
