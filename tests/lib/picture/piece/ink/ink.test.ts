import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { drawn } from '@/lib/picture/piece/ink/drawn'
import { pen } from '@/lib/picture/piece/ink/layer'
import { closed, line } from '@/lib/picture/piece/ink/shape'
import { wound } from '@/lib/picture/piece/ink/wound'
import { hex } from '@/lib/units/hex'
import { reachOf } from '../read-piece'

const green = hex('#4b6b3e')

describe('what is drawn', () => {
	test('ink counts: a pen 2 cm wide reaches 1 cm farther', () => {
		const piece = drawn([pen(green, 2, [line([0, 0], [[3, -20]])])])
		expect(piece).toMatchObject({ heightCm: 21, widthCm: 8, hangs: false, leans: false })
	})

	test('fitted to a height it keeps its proportions, its ink too', () => {
		const layers = [pen(green, 2, [line([0, 0], [[3, -20]])])]
		const piece = drawn(layers, { fitCm: 42 })
		expect(piece.heightCm).toBeCloseTo(42, 9)
		expect(piece.widthCm).toBeCloseTo(16, 9)
		expect(reachOf(piece).up).toBeCloseTo(42, 0)
	})

	test('what hangs is measured downwards', () => {
		const { heightCm, hangs } = drawn([pen(green, 1, [line([0, -2], [[0, 30]])])], { habit: 'hangs' })
		expect({ heightCm, hangs }).toEqual({ heightCm: 30.5, hangs: true })
	})
})

test('wound: whichever way a shape is drawn, it comes out right about, the same shape', () => {
	const points = fc.tuple(fc.integer({ min: -50, max: 50 }), fc.integer({ min: -50, max: 50 }))
	fc.assert(
		fc.property(points, points, points, points, (a, b, c, d) => {
			const [one, other] = [wound(closed(a, [b, c], [d], [a])), wound(closed(a, [d], [c], [b, a]))]
			const twice = wound(one)
			expect(twice).toEqual(one)
			expect('legs' in one && 'legs' in other).toBe(true)
		}),
	)
	expect(wound(closed([0, 0], [[0, 9]], [[9, 0]]))).toEqual(closed([9, 0], [[0, 9]], [[0, 0]]))
	expect(wound(closed([0, 0], [[9, 0]], [[0, 9]]))).toEqual(closed([0, 0], [[9, 0]], [[0, 9]]))
	expect(
		wound(
			closed(
				[0, 0],
				[
					[1, 8],
					[2, 9],
				],
				[[9, 1]],
			),
		),
	).toEqual(
		closed(
			[9, 1],
			[[2, 9]],
			[
				[1, 8],
				[0, 0],
			],
		),
	)
})
