import { type Cents, cents } from '@/lib/units/cents'
import { divideHalfUp, thousandths } from '@/lib/units/decimal'
import type { Rates } from '../rates'

/** Whose hands: the crew's, shared evenly between the owner and helpers, or the owner's own (design). */
export type Hands = 'crew' | 'owner'

/** Person-minutes at the billed rate, in cents, half up. */
export function labourPrice(minutes: number, { billedCentsPerHour }: Rates): Cents {
	return cents(Number(divideHalfUp(thousandths(minutes) * BigInt(billedCentsPerHour), 60_000n)))
}

function wageOf(hands: Hands, { crew, wageCentsPerHour: { owner, helper } }: Rates): { cents: bigint; people: bigint } {
	if (hands === 'owner' || crew === 1) return { cents: BigInt(owner), people: 1n }
	return { cents: BigInt(owner + helper * (crew - 1)), people: BigInt(crew) }
}

/**
 * Person-minutes at the loaded cost, in cents, half up: wage × burden × paid hours ÷ billable hours.
 * The owner's minutes count at a wage too.
 */
export function labourCost(minutes: number, hands: Hands, rates: Rates): Cents {
	const wage = wageOf(hands, rates)
	const loaded = wage.cents * thousandths(rates.burden) * BigInt(rates.paidHours)
	const per = 60_000n * 1000n * BigInt(rates.billableHours) * wage.people
	return cents(Number(divideHalfUp(thousandths(minutes) * loaded, per)))
}
