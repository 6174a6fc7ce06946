import { z } from 'zod'
import { amountField, emptyOr, idField } from '../../../forms/fields'
import { quarters } from '../../../season/season'
import { type VisitKind, visitKinds } from '../../../visit/visit'
import type { AgreedSeason } from '../../season'

const yearField = z
	.string()
	.trim()
	.regex(/^2[0-3]\d\d$/, 'Give a year such as 2027.')
	.transform(Number)

const countField = z
	.string()
	.trim()
	.regex(/^\d{0,2}$/, 'Give a number of visits from 0 to 60.')
	.transform(Number)
	.refine((count) => count <= 60, 'Give a number of visits from 0 to 60.')

const visitFields: Record<VisitKind, typeof countField> = {
	install: countField,
	refresh: countField,
	watering: countField,
	check: countField,
	'take-down': countField,
}

const filled = z
	.strictObject({
		quarter: z.enum(quarters, 'Choose a season.'),
		year: yearField,
		is: z.enum(['fixed', 'quoted'], 'Choose how it is priced.'),
		price: emptyOr(amountField),
		container: z
			.array(idField<'container'>())
			.max(60)
			.default([])
			.transform((all) => [...new Set(all)]),
		...visitFields,
	})
	.refine(({ is, price }) => is !== 'fixed' || price !== null, {
		message: 'Give the fixed price, or choose that it is quoted.',
		path: ['price'],
	})
	.transform(
		({ quarter, year, is, price, container, ...counts }): AgreedSeason => ({
			...{ quarter, year, containers: container },
			price: is === 'fixed' && price !== null ? { is, cents: price } : { is: 'quoted' },
			visits: visitKinds.flatMap((kind) => (counts[kind] === 0 ? [] : [{ kind, count: counts[kind] }])),
		}),
	)

/** A season that is to go: its box says none. What else its boxes hold is left alone. */
const empty = z.looseObject({ quarter: z.literal('') }).transform(() => null)

/** One season of the form; null where none is chosen. */
export const seasonFields = z.unknown().transform((row, context): AgreedSeason | null => {
	if (empty.safeParse(row).success) return null
	const read = filled.safeParse(row)
	if (read.success) return read.data
	for (const { path, message } of read.error.issues) context.addIssue({ code: 'custom', path: [...path], message })
	return z.NEVER
})
