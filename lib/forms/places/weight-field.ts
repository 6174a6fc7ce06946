import { z } from 'zod'
import type { LengthUnit } from '../../format/length'
import { readWeight } from '../../format/read-weight'
import { kgPerPound } from '../../format/weight'

/** A weight as it was typed, in kg, between nothing and `mostKg`; in the studio's units where it names none. */
export const weightField = (mostKg: number, unit: LengthUnit) =>
	z.string().transform((typed, context): number => {
		const kg = readWeight(typed, unit)
		if (kg !== null && kg <= mostKg) return kg
		const most = unit === 'in' ? `${Math.floor(mostKg / kgPerPound)} lb` : `${mostKg} kg`
		const message = kg === null ? 'Give a weight such as 12 or 12.5.' : `Give a weight of at most ${most}.`
		context.addIssue({ code: 'custom', message })
		return z.NEVER
	})
