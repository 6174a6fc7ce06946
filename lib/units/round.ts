/** What a float's dust must not decide: 4.4999999999999 was meant as a half. */
const meant = (value: number) => Number(value.toPrecision(12))

/** To the nearest multiple of 1 / `parts`, a half going up; never falls when `value` rises. For what is not negative. */
export const halfUp = (value: number, parts = 1): number => Math.floor(meant(value * parts) + 0.5) / parts

/** The odd number nearest to `value`, the greater where two are as near; at least 1. */
export const nearestOdd = (value: number): number => Math.max(1, 2 * Math.floor(meant(value) / 2) + 1)
