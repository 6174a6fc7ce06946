import type { Dice } from '../piece'

/** Fowler, Noll and Vo’s hash 1a of 32 bits, over UTF-16 units. */
function fnv1a(text: string): number {
	let value = 0x811c9dc5
	for (let at = 0; at < text.length; at++) value = Math.imul(value ^ text.charCodeAt(at), 0x01000193)
	return value >>> 0
}

/** Dice that fall the same way each time for the same `seed` (a Weyl sequence, mixed as mulberry32 does). */
export function diceOf(seed: string): Dice {
	let state = fnv1a(seed)
	return () => {
		state = (state + 0x6d2b79f5) >>> 0
		let mixed = Math.imul(state ^ (state >>> 15), state | 1)
		mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61)
		return ((mixed ^ (mixed >>> 14)) >>> 0) / 0x1_0000_0000
	}
}

/** Evenly between `least` and `most`. */
export const between = (dice: Dice, least: number, most: number): number => least + (most - least) * dice()

/** Round nought, `reach` at most to either side, small more often than great. */
export const wobble = (dice: Dice, reach: number): number => (dice() + dice() - 1) * reach

export function pick<T>(dice: Dice, from: readonly [T, ...T[]]): T {
	return from[Math.floor(dice() * from.length)] ?? from[0]
}
