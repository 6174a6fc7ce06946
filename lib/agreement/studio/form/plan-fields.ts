import { z } from 'zod'
import { amountField, dayField, emptyOr } from '../../../forms/fields'
import { quarters } from '../../../season/season'
import { visitKinds } from '../../../visit/visit'
import type { Due, Plan, Start } from '../../instalment/plan'

const whole = (least: number, most: number) =>
	z
		.string()
		.trim()
		.regex(/^\d{1,3}$/, `Give a whole number from ${least} to ${most}.`)
		.transform(Number)
		.refine((count) => count >= least && count <= most, `Give a whole number from ${least} to ${most}.`)

const visitShape = new RegExp(`^(${quarters.join('|')}) (2[0-3]\\d\\d) (${visitKinds.join('|')}) (\\d{1,2})$`)

/** "winter 2026 install 1" */
function visitDue(text: string): Due | undefined {
	const [, quarterText, year, kindText, number] = visitShape.exec(text) ?? []
	const quarter = quarters.find((each) => each === quarterText)
	const visit = visitKinds.find((each) => each === kindText)
	if (quarter === undefined || visit === undefined || Number(number) < 1) return undefined
	return { is: 'at visit', season: { quarter, year: Number(year) }, visit, number: Number(number) }
}

type Typed = { readonly due: string; readonly day: string; readonly months: string }

function dueOf({ due, day, months }: Typed, context: z.RefinementCtx): Due {
	const wrong = (path: string, message: string) => {
		context.addIssue({ code: 'custom', path: [path], message })
		return z.NEVER
	}
	if (due === 'day') {
		const read = dayField.safeParse(day)
		return read.success ? { is: 'on', day: read.data } : wrong('day', 'Choose the day on which it falls due.')
	}
	if (due === 'signing') {
		const read = whole(0, 420).safeParse(months === '' ? '0' : months)
		return read.success
			? { is: 'on approval', monthsLater: read.data }
			: wrong('months', 'Give a whole number of months after signing.')
	}
	return visitDue(due) ?? wrong('due', 'Choose when it falls due.')
}

const texts = { due: z.string(), day: z.string(), months: z.string().trim() }
const share = emptyOr(amountField.refine((amount) => amount > 0, 'Give a share above zero.'))

/** One date of its own with its share; null where no share is given. */
const part = z
	.strictObject({ share, ...texts })
	.transform(({ share: weight, ...typed }, context) =>
		weight === null ? null : { weight, due: dueOf(typed, context) },
	)

export const planShape = {
	plan: z.enum(['', 'per visit', 'monthly', 'quarterly', 'months', 'own'], 'Choose how it is paid.'),
	planMonths: z.string(),
	planCount: z.string(),
	planStart: z.enum(['on', 'first of the month', 'on approval'], 'Choose when the first falls due.'),
	planDay: z.string(),
	part: z.array(part).max(36),
}
type Shape = z.output<z.ZodObject<typeof planShape>>

function startOf({ planStart, planDay }: Shape, context: z.RefinementCtx): Start {
	if (planStart === 'on approval') return { is: planStart }
	const day = dayField.safeParse(planDay)
	if (day.success) return planStart === 'on' ? { is: planStart, day: day.data } : { is: planStart, from: day.data }
	context.addIssue({ code: 'custom', path: ['planDay'], message: 'Choose the day of the first instalment.' })
	return z.NEVER
}

function number(field: z.ZodType<number>, text: string, path: string, context: z.RefinementCtx): number {
	const read = field.safeParse(text)
	if (read.success) return read.data
	context.addIssue({ code: 'custom', path: [path], message: read.error.issues[0]?.message ?? '' })
	return z.NEVER
}

/** How the fixed prices are paid, from its boxes; null where every season is quoted. Boxes of another plan are left alone. */
export function planOf(shape: Shape, context: z.RefinementCtx): Plan | null {
	const { plan } = shape
	switch (plan) {
		case '':
			return null
		case 'per visit':
			return { is: 'per visit' }
		case 'monthly':
		case 'quarterly':
		case 'months': {
			const fixed = { monthly: 1, quarterly: 3, months: 0 }[plan]
			const months = fixed === 0 ? number(whole(1, 12), shape.planMonths, 'planMonths', context) : fixed
			const count = number(whole(1, 36), shape.planCount, 'planCount', context)
			return { is: 'every months', months, count, start: startOf(shape, context) }
		}
		case 'own': {
			const parts = shape.part.flatMap((each) => each ?? [])
			if (parts.length === 0)
				context.addIssue({ code: 'custom', path: ['part.0.share'], message: 'Give one date with its share at least.' })
			return { is: 'own dates', parts }
		}
		default:
			return plan satisfies never
	}
}
