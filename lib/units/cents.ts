import type { Brand } from './brand'

/** Whole minor units of the studio's currency; may be negative for a discount. */
export type Cents = Brand<number, 'Cents'>

/** @throws when `amount` is not a safe integer: money is never rounded by accident. */
export function cents(amount: number): Cents {
	if (!Number.isSafeInteger(amount)) throw new Error(`cents: ${amount} is not a whole number of cents`)
	return (amount === 0 ? 0 : amount) as Cents
}

export const zero = cents(0)

export function sum(amounts: Iterable<Cents>): Cents {
	let total = 0
	for (const amount of amounts) total += amount
	return cents(total)
}
