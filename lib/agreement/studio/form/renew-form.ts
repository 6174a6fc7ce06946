import { z } from 'zod'
import { amountField, dayField, idField, onceField } from '../../../forms/fields'
import { quarters } from '../../../season/season'
import type { Cents } from '../../../units/cents'
import { cents } from '../../../units/cents'
import type { Id } from '../../../units/id'
import type { Renewal } from '../../renewal/renewed'
import { type Rise, riseSchema } from '../../renewal/renewed-price'

const steps = ['1', '100', '500', '1000'] as const

/** "4", "-2.5": per cent with three decimals at most, or an amount to the cent. */
const signed = z
	.string()
	.trim()
	.regex(/^[-−]?\d{1,6}(?:\.\d{1,3})?$/, 'Give a number such as 4 or -2.5.')
	.transform((text) => text.replace('−', '-'))

/** What the page is asked for: by how much, and to which step. */
const askShape = z.object({
	year: z
		.string()
		.regex(/^2[0-3]\d\d$/)
		.transform(Number)
		.optional()
		.catch(undefined),
	by: z.enum(['percent', 'amount']).catch('percent'),
	rise: signed.catch('0'),
	step: z.enum(steps).catch('500'),
})
export type RenewalAsk = z.output<typeof askShape>
export const renewalAsk = (given: unknown): RenewalAsk => askShape.parse(given)

/** Digit by digit, never by way of a float. */
function amountOf(text: string): Cents {
	const [whole = '0', part = ''] = text.replace('-', '').split('.')
	const amount = Number(`${whole}${part.slice(0, 2).padEnd(2, '0')}`)
	return cents(text.startsWith('-') ? -amount : amount)
}

/** The rise as it is asked for; none where it is too much to be one. */
export function riseOf({ by, rise }: RenewalAsk): Rise {
	const asked = by === 'percent' ? { is: by, percent: Number(rise) } : { is: by, cents: amountOf(rise) }
	const read = riseSchema.safeParse(asked)
	return read.success ? read.data : { is: 'percent', percent: 0 }
}

export const renewalOf = (ask: RenewalAsk): Renewal => ({
	rise: riseOf(ask),
	stepCents: Number(ask.step),
	adjusted: [],
})

const priceName = new RegExp(`^price\\.([0-9a-f-]{36})\\.(${quarters.join('|')}) (2[0-3]\\d\\d)$`)

/** What a box of a new price is called. */
export const priceBox = (agreement: string, { quarter, year }: Renewal['adjusted'][number]['season']): string =>
	`price.${agreement}.${quarter} ${year}`

const shape = z.strictObject({
	once: onceField,
	signBy: dayField,
	pick: z.array(idField<'agreement'>()).min(1, 'Tick the agreements that are to be renewed.').max(500),
	/** What the page was asked for, which it is led back to. */
	ask: z.string().max(200).optional(),
})

type Renewing = z.output<typeof shape> & { readonly renewalOf: (agreement: Id<'agreement'>) => Renewal }

/** What is ticked, until when it is to be signed, and each season's price as it stands in its box. */
export const renewForm = z
	.record(z.string(), z.union([z.string(), z.array(z.string())]))
	.transform((fields, context): Renewing => {
		const prices = new Map<string, Renewal['adjusted'][number][]>()
		const rest: Record<string, unknown> = {}
		for (const [name, value] of Object.entries(fields)) {
			const [, agreement, quarterText, year] = priceName.exec(name) ?? []
			const quarter = quarters.find((each) => each === quarterText)
			if (agreement === undefined || quarter === undefined) rest[name] = value
			else {
				const amount = amountField.refine((each) => each > 0, 'Give a price above zero.').safeParse(value)
				if (amount.success)
					prices.set(agreement, [
						...(prices.get(agreement) ?? []),
						{ season: { quarter, year: Number(year) }, cents: amount.data },
					])
				else context.addIssue({ code: 'custom', path: [name], message: amount.error.issues[0]?.message ?? '' })
			}
		}
		const read = shape.safeParse(rest)
		if (!read.success) {
			for (const { path, message } of read.error.issues) context.addIssue({ code: 'custom', path: [...path], message })
			return z.NEVER
		}
		const none: Rise = { is: 'percent', percent: 0 }
		return {
			...read.data,
			renewalOf: (agreement) => ({ rise: none, stepCents: 1, adjusted: prices.get(agreement) ?? [] }),
		}
	})
