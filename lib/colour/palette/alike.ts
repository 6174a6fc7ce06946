import type { Hex } from '../../units/hex'
import { isWithin, labOf } from '../difference'

/** How many colours lead a palette; those after them are greens and quiet ones that many palettes share. */
const leading = 3
/** ΔE00 up to which two colours are near each other (common practice, no published source). */
const near = 10

const hasNear = (of: Hex, among: readonly Hex[]): boolean =>
	among.some((other) => isWithin(labOf(of), labOf(other), near))

/**
 * Whether two palettes, their leading colours first, would look the same from across the street: each leading colour of
 * either is near one of the other's. Names do not count, nor the order of the leading three.
 */
export function alike(a: readonly Hex[], b: readonly Hex[]): boolean {
	const [one, other] = [a.slice(0, leading), b.slice(0, leading)]
	if (one.length === 0 || other.length === 0) return false
	return one.every((hex) => hasNear(hex, other)) && other.every((hex) => hasNear(hex, one))
}
