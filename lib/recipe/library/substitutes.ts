import { difference } from '../../colour/difference'
import type { Light } from '../../container/card'
import { type LengthUnit, length } from '../../format/length'
import { leastToSpare, zonesToSpare } from '../almanac/zone'
import { type DesignMaterial, isAtHand, type Month } from '../traits'

export type Wanted = {
	/** In which it has to be had. */
	readonly month: Month
	/** USDA zone of the place where a live plant has to stand the winter; null where none has to, or it is not known. */
	readonly zone: number | null
	readonly light: Light
	readonly lengths: LengthUnit
}

export type Substitute = {
	readonly material: DesignMaterial
	/** ΔE00 of the colours. */
	readonly difference: number
	/** Taller than what it stands in for, in cm; null where one of the two has no length. */
	readonly tallerCm: number | null
	readonly reasons: readonly string[]
}

function thrives({ kind, zone, wants }: DesignMaterial, { zone: place, light }: Wanted): boolean {
	if (kind !== 'live') return true
	const isHardy = place === null || zone === null || zonesToSpare(zone, place) >= leastToSpare
	return isHardy && (wants.length === 0 || wants.includes(light))
}

/** ΔE00 in words (steps: common practice). */
function colourWords(by: number): string {
	if (by < 2.3) return 'the same colour to the eye'
	if (by < 6) return 'a colour very near it'
	if (by < 15) return 'a related colour'
	return 'another colour'
}

function heightWords(tallerCm: number | null, unit: LengthUnit): string {
	if (tallerCm === null) return 'one of the two has no length on its card'
	if (Math.abs(tallerCm) < 2) return 'as tall'
	return `${length(Math.abs(tallerCm), unit)} ${tallerCm > 0 ? 'taller' : 'shorter'}`
}

const hazardWords = (old: DesignMaterial, { hazards }: DesignMaterial) => [
	...hazards
		.filter((each) => !old.hazards.includes(each))
		.map((each) => (each === 'small parts' ? 'has small parts' : each)),
	...old.hazards
		.filter((each) => !hazards.includes(each))
		.map((each) => `not ${each === 'small parts' ? 'of small parts' : each}`),
]

/** A fifth of the height counts as much as four steps of ΔE00; a length not known as half of it (common practice). */
function distance({ difference: by, tallerCm }: Substitute, { lengthCm }: DesignMaterial): number {
	if (tallerCm === null) return by + 10
	const tallest = Math.max(lengthCm ?? 0, (lengthCm ?? 0) + tallerCm, 1)
	return by + (20 * Math.abs(tallerCm)) / tallest
}

function substitute(old: DesignMaterial, material: DesignMaterial, { lengths }: Wanted): Substitute {
	const by = difference(old.hex, material.hex)
	const tallerCm = old.lengthCm === null || material.lengthCm === null ? null : material.lengthCm - old.lengthCm
	const hasLength = old.lengthCm !== null || material.lengthCm !== null
	return {
		material,
		difference: by,
		tallerCm,
		reasons: [
			...(material.inStock > 0 ? [`${material.inStock} in stock`] : []),
			colourWords(by),
			...(hasLength ? [heightWords(tallerCm, lengths)] : []),
			...hazardWords(old, material),
		],
	}
}

/**
 * What can stand in for a material: of its role, to be had in the month or in stock, hardy and content with the light;
 * what is in stock first, then the nearest in colour (CIEDE2000) and height. Each with its reasons in words.
 */
export function substitutes(old: DesignMaterial, all: readonly DesignMaterial[], wanted: Wanted): Substitute[] {
	const inStock = ({ material }: Substitute) => Number(material.inStock > 0)
	return all
		.filter(({ id, role }) => id !== old.id && role === old.role)
		.filter((each) => isAtHand(each, wanted.month) && thrives(each, wanted))
		.map((each) => substitute(old, each, wanted))
		.toSorted(
			(a, b) =>
				inStock(b) - inStock(a) || distance(a, old) - distance(b, old) || (a.material.id < b.material.id ? -1 : 1),
		)
}
