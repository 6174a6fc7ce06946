import { type Cents, cents, sum, zero } from '@/lib/units/cents'
import { divideHalfUp, thousandths } from '@/lib/units/decimal'
import { allocate } from './allocate'
import type { Gross } from './gross'
import type { Job } from './job'
import type { Split } from './price-list'

/** A part with its share of the discount and its rounding, in cents. */
export type Settled = {
	readonly gross: Gross
	readonly discountCents: Cents
	readonly roundingCents: Cents
	readonly cents: Cents
}

const percentOf = (amount: Cents, percent: number): Cents =>
	cents(Number(divideHalfUp(BigInt(amount) * thousandths(percent), 100_000n)))

const upTo = (amount: Cents, step: number): Cents => cents(Math.ceil(amount / step) * step)

/** The discount on a group of parts, each bearing its share. */
function discounts(group: readonly Gross[], percent: number): Cents[] {
	if (group.length === 0) return []
	const amounts = group.map((part) => part.cents)
	return allocate(percentOf(sum(amounts), percent), amounts)
}

function settleGroup(group: readonly Gross[], percent: number, step: number): Settled[] {
	const shares = discounts(group, percent)
	return group.map((gross, index) => {
		const discountCents = shares[index] ?? zero
		const exact = cents(gross.cents - discountCents)
		const rounded = upTo(exact, step)
		return {
			gross,
			discountCents,
			roundingCents: cents(rounded - exact),
			cents: rounded,
		}
	})
}

/**
 * Discount on containers and on extras, each group spread by largest remainder when the price is made, so that
 * a choice made later moves no other price; then each container up to the presentation step.
 */
export function settle(parts: readonly Gross[], { agreement, rates }: Pick<Job, 'agreement' | 'rates'>): Settled[] {
	const percent = agreement.is === 'discount' ? agreement.percent : 0
	const containers = parts.filter(({ is }) => is === 'container')
	const extras = parts.filter(({ is }) => is === 'extra')
	const others = parts.filter(({ is }) => is !== 'container' && is !== 'extra')
	return [
		...settleGroup(containers, percent, rates.presentationStepCents),
		...settleGroup(others, 0, 1),
		...settleGroup(extras, percent, 1),
	]
}

/** `amount` split by class of tax in the proportions of `like`. */
export function splitLike(amount: Cents, { plants, goods, labour }: Split): Split {
	const [a = zero, b = zero, c = zero] = allocate(amount, [plants, goods, labour])
	return { plants: a, goods: b, labour: c }
}
