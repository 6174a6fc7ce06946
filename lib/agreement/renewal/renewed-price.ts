import { z } from 'zod'
import { mostCents } from '../../proposal/draft'
import { type Cents, cents } from '../../units/cents'
import { divideHalfUp, thousandths } from '../../units/decimal'
import { centsSchema } from '../../units/schema'

const hasThousandths = (value: number) => Math.round(value * 1000) / 1000 === value

/** By how much each season's price rises, or falls where it is below zero. */
export const riseSchema = z.discriminatedUnion('is', [
	z.strictObject({
		is: z.literal('percent'),
		percent: z.number().min(-100).max(100).refine(hasThousandths, 'has more than three decimals'),
	}),
	z.strictObject({ is: z.literal('amount'), cents: z.int().min(-mostCents).max(mostCents).pipe(centsSchema) }),
])
export type Rise = z.infer<typeof riseSchema>

const whole = 100_000n

/** The new price as a whole number of hundred-thousandths of a cent. */
function exactly(was: Cents, rise: Rise): bigint {
	switch (rise.is) {
		case 'percent':
			return BigInt(was) * (whole + thousandths(rise.percent))
		case 'amount':
			return BigInt(was + rise.cents) * whole
		default:
			return rise satisfies never
	}
}

/**
 * Next year's price, to the nearest step (500 is five whole units of money; 1 is the cent), a half going up. It may come
 * to nothing or less, which no agreement is issued with.
 * @throws when the step is no whole number of cents above zero
 */
export function renewedPrice(was: Cents, rise: Rise, stepCents: number): Cents {
	if (!Number.isSafeInteger(stepCents) || stepCents < 1) throw new Error(`renewedPrice: ${stepCents} is no step`)
	const step = BigInt(stepCents)
	return cents(Number(divideHalfUp(exactly(was, rise), step * whole) * step))
}
