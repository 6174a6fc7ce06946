import type { Dice } from '../../piece'

export const roll = (dice: Dice, low: number, high: number): number => low + dice() * (high - low)

/** `count` things in a row; `t` runs from 0 to 1. */
export const times = <Made>(count: number, make: (t: number, index: number) => Made): Made[] =>
	Array.from({ length: count }, (_, index) => make(count > 1 ? index / (count - 1) : 0.5, index))

/** Left for the even, right for the odd. */
export const side = (index: number): -1 | 1 => (index % 2 === 0 ? -1 : 1)

/** Every other one from the first, and the rest. */
export const alternate = <Of>(all: readonly Of[]): readonly [Of[], Of[]] => [
	all.filter((_, index) => index % 2 === 0),
	all.filter((_, index) => index % 2 === 1),
]
