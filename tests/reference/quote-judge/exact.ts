import Fraction from 'fraction.js'

/** Exact arithmetic with fraction.js for the judge; it shares nothing with the code that it judges. */
export type { Fraction }

/** A decimal as it is written: 0.1 is one tenth. */
export const exact = (decimal: number): Fraction => new Fraction(String(decimal))

export const none = new Fraction(0)

/** To the nearest whole, a half up. Nothing here is below zero but a margin. */
export const half = (value: Fraction): Fraction => (value.lt(0) ? half(value.neg()).neg() : value.add(1, 2).floor())

/** To the nearest thousandth: what the studio keeps of minutes, pieces and litres. */
export const kept = (value: Fraction): Fraction => half(value.mul(1000)).div(1000)

export const percent = (value: Fraction, of: number): Fraction => value.mul(exact(of)).div(100)

export const plus = (values: readonly Fraction[]): Fraction => values.reduce((all, each) => all.add(each), none)

/**
 * Largest remainder as it is taught: everybody gets the whole part of their quota, then what is left is handed out one
 * by one, each to the largest remainder that has had none; of equals, the earlier.
 */
export function shareOut(total: Fraction, weights: readonly Fraction[]): Fraction[] {
	const whole = plus(weights)
	if (whole.equals(0)) return weights.map((_, n) => (n === 0 ? total : none))
	const quotas = weights.map((weight) => total.mul(weight).div(whole))
	const shares = quotas.map((quota) => quota.floor())
	const rests = quotas.map((quota, n) => ({ n, rest: quota.sub(quota.floor()) }))
	for (let left = total.sub(plus(shares)); left.gt(0); left = left.sub(1)) {
		const largest = rests.reduce((best, each) => (each.rest.gt(best.rest) ? each : best))
		shares[largest.n] = (shares[largest.n] ?? none).add(1)
		largest.rest = new Fraction(-1)
	}
	return shares
}
