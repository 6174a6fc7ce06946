import fc from 'fast-check'
import { expect, test } from 'vitest'
import { isWithin, labDifference, labOf } from '@/lib/colour/difference'
import { hexes } from './arbitrary'

test('leaving the rest of the formula out where lightness alone decides changes no answer', () => {
	fc.assert(
		fc.property(hexes, hexes, fc.double({ min: 0, max: 120, noNaN: true }), (a, b, most) => {
			const [one, other] = [labOf(a), labOf(b)]
			expect(isWithin(one, other, most)).toBe(labDifference(one, other) <= most)
		}),
		{ numRuns: 5000 },
	)
})

test('at the ends of lightness, where the formula weighs it down most', () => {
	const grey = (l: number) => ({ mode: 'lab65', l, a: 0, b: 0 }) as const
	for (const [l, by] of [
		[0, 0.5],
		[99.25, 0.75],
	] as const) {
		const apart = labDifference(grey(l), grey(l + by))
		expect(isWithin(grey(l), grey(l + by), apart)).toBe(true)
		expect(isWithin(grey(l), grey(l + by), apart - 1e-9)).toBe(false)
	}
})
