import { z } from 'zod'
import type { Part, PriceList } from '../../pricing/price-list'
import { idSchema, centsSchema as money } from '../../units/schema'

const place = idSchema<'place'>()
const container = idSchema<'container'>()
const priced = {
	name: z.string(),
	place,
	cents: money,
	split: z.strictObject({ plants: money, goods: money, labour: money }),
	bill: z.enum(['agreement', 'apart']),
}

const part: z.ZodType<Part> = z.union([
	z.strictObject({ is: z.enum(['container', 'disposal', 'soil', 'take-down']), container, ...priced }),
	z.strictObject({ is: z.enum(['travel', 'design', 'season', 'supplement']), ...priced }),
	z.strictObject({ is: z.literal('extra'), extra: z.string(), ...priced }),
])

/** A price list as it is frozen in an offer; strict, so that a cost cannot be read back as one. */
export const offeredPrices: z.ZodType<PriceList> = z.strictObject({
	is: z.literal('price list'),
	currency: z.string(),
	ratesVersion: z.int(),
	parts: z.array(part),
	discountPercent: z.number(),
	minimumVisitCents: money.nullable(),
	tax: z.strictObject({
		taxable: z.strictObject({ plants: z.boolean(), goods: z.boolean(), labour: z.boolean() }),
		labour: z.enum(['stated separately', 'taxed whole']),
		basis: z.enum(['invoice', 'line']),
		places: z.array(z.strictObject({ place, milliPercent: z.int().min(0) })),
	}),
	payer: z.strictObject({
		kind: z.enum(['business', 'household']),
		netDays: z.union([z.literal(15), z.literal(30)]),
		exemptCertificate: z.string().nullable(),
	}),
	depositPercent: z.number(),
	isUnderAgreement: z.boolean(),
})

/** What an extra adds before tax; undefined when the list does not offer it. */
export const extraCents = ({ parts }: PriceList, key: string) =>
	parts.find((each) => each.is === 'extra' && each.extra === key)?.cents
