import { z } from 'zod'
import { isRound } from '../../container/card'
import type { Measured } from '../../container/measured/whole'
import type { LengthUnit } from '../../format/length'
import { hex } from '../../units/hex'
import { placeForm } from '../client-forms'
import { emptyOr, idField, onceField } from '../fields'
import { asWhole, cardBoxes } from './card-form'

/** What stands in the box of a wall's colour until somebody chooses one. */
export const wallUnseen = hex('#8a94a0')

const { name, address, taxPercent, driveMinutes, wallKind, wallHex, accessNote } = placeForm.shape
const newPlace = z
	.strictObject({ name, address, taxPercent, driveMinutes, wallKind, wallHex, accessNote })
	.transform(({ taxPercent: taxMilliPercent, ...rest }) => {
		return { ...rest, taxMilliPercent, zoneCents: null, doorHex: null, hardinessZone: null }
	})

/** Measured at the desk, if ever: usual until then. */
const later: Pick<Measured, 'wallCm' | 'headspaceCm' | 'soilDepthCm'> & { readonly vesselKg: null } = {
	wallCm: null,
	headspaceCm: null,
	soilDepthCm: null,
	vesselKg: null,
}
/** Where a fault of what is usual is told: beside what it follows from. */
export const besideAtKerb = { wallCm: 'wall', headspaceCm: 'heightCm', soilDepthCm: 'heightCm' } as const

/** What is round is asked for no depth: what was typed before its shape was chosen does not count. */
const withoutLater = (unit: LengthUnit) => {
	const { wallCm: _, headspaceCm: __, soilDepthCm: ___, vesselKg: ____, ...boxes } = cardBoxes(unit)
	return z.strictObject(boxes).transform((of) => {
		const depths = isRound(of.shape) ? { topDepthCm: null, bottomDepthCm: null } : {}
		return { ...of, ...depths, ...later }
	})
}

const most = 12
const number = z.string().regex(/^\d{1,3}$/)

/** What is written down at the kerb in one go: a place, new or known, and containers under the numbers of their boxes. */
export const kerbForm = (unit: LengthUnit) =>
	z
		.strictObject({
			once: onceField,
			/** Who wrote it down, where it may be sent later than it was written. */
			by: idField<'person'>().optional(),
			place: emptyOr(idField<'place'>()),
			new: newPlace.optional(),
			container: z
				.record(number, asWhole(withoutLater(unit), besideAtKerb))
				.transform((of) => Object.values(of))
				.refine(({ length }) => length > 0, 'Add a container.')
				.refine(({ length }) => length <= most, `${most} containers are the most in one go. Send these first.`),
		})
		.refine(({ place, new: made }) => place !== null || made !== undefined, {
			message: 'Choose the place, or say what the new one is called.',
			path: ['place'],
		})
