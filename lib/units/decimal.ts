/**
 * A decimal as a whole number of thousandths, so that it can be computed with exactly.
 * @throws when `value` has more than three decimals, or is not finite
 */
export function thousandths(value: number): bigint {
	const scaled = Math.round(value * 1000)
	if (!Number.isSafeInteger(scaled) || scaled / 1000 !== value)
		throw new Error(`thousandths: ${value} has more than three decimals`)
	return BigInt(scaled)
}

/** numerator ÷ denominator to the nearest whole, a half going away from zero ("half up" of a price and of its refund). */
export function divideHalfUp(numerator: bigint, denominator: bigint): bigint {
	if (denominator <= 0n) throw new Error(`divideHalfUp: ${denominator} is not above zero`)
	const twice = 2n * (numerator < 0n ? -numerator : numerator) + denominator
	const whole = twice / (2n * denominator)
	return numerator < 0n ? -whole : whole
}

/** numerator ÷ denominator, the next whole above when it does not divide: for packs, which cannot be cut. */
export function divideUp(numerator: bigint, denominator: bigint): bigint {
	if (denominator <= 0n || numerator < 0n) throw new Error(`divideUp: ${numerator} ÷ ${denominator}`)
	return (numerator + denominator - 1n) / denominator
}
