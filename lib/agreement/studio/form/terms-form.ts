import { z } from 'zod'
import { dayField, emptyOr, idField, onceField, text } from '../../../forms/fields'
import { clauseKeySchema } from '../../template/template'
import type { Terms } from '../../terms'
import { formParts, mostRows } from './parts'
import { planOf, planShape } from './plan-fields'
import { seasonFields } from './season-fields'

const day = emptyOr(dayField)
const noticeField = emptyOr(
	z
		.string()
		.trim()
		.regex(/^\d{1,3}$/, 'Give a number of days from 0 to 365.')
		.transform(Number)
		.refine((days) => days <= 365, 'Give a number of days from 0 to 365.'),
)
export const versionField = z
	.string()
	.regex(/^\d{1,9}$/, 'Open the agreement again.')
	.transform(Number)

const shape = z.strictObject({
	once: onceField,
	agreement: idField<'agreement'>(),
	version: versionField,
	from: day,
	to: day,
	season: z.array(seasonFields).max(mostRows.season),
	...planShape,
	waters: z.enum(['', 'client', 'studio'], 'Choose who waters.'),
	sold: text(300),
	lent: text(300),
	lightsDownBy: day,
	noticeDays: noticeField,
	law: text(120),
	without: z.array(clauseKeySchema).max(60),
})

const texts = z.record(z.string(), z.union([z.string(), z.array(z.string())]))

/** The terms as they were typed; boxes that wait to be filled are no error, for they are kept as a draft is. */
export const termsForm = z
	.preprocess((given) => {
		const boxes = texts.safeParse(given)
		return boxes.success ? formParts(boxes.data) : given
	}, shape)
	.transform((typed, context) => {
		const { once, agreement, version, from, to, season, waters, sold, lent, lightsDownBy, noticeDays, law } = typed
		if (from !== null && to !== null && to < from)
			context.addIssue({ code: 'custom', path: ['to'], message: 'It would end before it begins.' })
		const said = { waters: waters === '' ? null : waters, sold, lent, lightsDownBy, noticeDays, law }
		const seasons = season.flatMap((each) => each ?? [])
		const without = [...new Set(typed.without)]
		const terms: Terms = { v: 1, from, to, seasons, plan: planOf(typed, context), said, without }
		return { once, agreement, version, terms }
	})
