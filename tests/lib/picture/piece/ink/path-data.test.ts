import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { pathData } from '@/lib/picture/piece/ink/path-data'
import { closed, disc, dot, line, oval } from '@/lib/picture/piece/ink/shape'
import { readPath } from '../read-path'

const named = [
	{ name: 'a line', shapes: [line([1, 2], [[3, 5]])], d: 'm10 20 20 30' },
	{ name: 'two lines', shapes: [line([0, 0], [[1, 0]]), line([2, 2], [[1, 1]])], d: 'm0 0 10 0m10 20-10-10' },
	{
		name: 'a leaf',
		shapes: [
			closed(
				[0, 0],
				[
					[-1, -2],
					[0, -4],
				],
				[
					[1.1, -2],
					[0, 0],
				],
			),
		],
		d: 'm0 0q-10-20 0-40 11 20 0 40z',
	},
	{ name: 'a dot', shapes: [dot([0.5, -0.7])], d: 'm5-7 0 0' },
	{ name: 'what is rounded half a step', shapes: [line([0.04, 0.06], [[0.12, 0.18]])], d: 'm0 1 1 1' },
] as const

describe('a path', () => {
	test.each(named)('$name', ({ shapes, d }) => {
		expect(pathData(shapes, 0.1)).toBe(d)
	})

	test('does not drift: after a thousand short steps it ends where it should', () => {
		const legs = Array.from({ length: 1000 }, (_, index) => [[0.0337 * (index + 1), 0.0211 * (index + 1)]] as const)
		const [outline] = readPath(pathData([line([0, 0], ...legs)], 0.1))
		const [x = 0, y = 0] = outline?.points.at(-1) ?? []
		expect(Math.abs(x * 0.1 - 33.7)).toBeLessThanOrEqual(0.05)
		expect(Math.abs(y * 0.1 - 21.1)).toBeLessThanOrEqual(0.05)
	})

	test('a disc is round: every point of it is a radius from its middle', () => {
		const radii = fc.double({ min: 0.5, max: 40, noNaN: true })
		fc.assert(
			fc.property(radii, (radiusCm) => {
				const [outline] = readPath(pathData([disc([3, -20], radiusCm)], 0.05))
				for (const [x, y] of outline?.points ?? [])
					expect(Math.abs(Math.hypot(x * 0.05 - 3, y * 0.05 + 20) - radiusCm)).toBeLessThan(0.1)
				expect(outline?.isClosed).toBe(true)
			}),
		)
	})

	test('an ellipse is as long and as wide as it should be, turned as it should be', () => {
		const [outline] = readPath(pathData([oval([0, 0], 10, 4, Math.PI / 6)], 0.02))
		const far = (outline?.points ?? []).map(([x, y]) => [x * 0.02, y * 0.02] as const)
		const along = far.map(([x, y]) => Math.abs(x * Math.cos(Math.PI / 6) + y * Math.sin(Math.PI / 6)))
		const across = far.map(([x, y]) => Math.abs(y * Math.cos(Math.PI / 6) - x * Math.sin(Math.PI / 6)))
		expect(Math.max(...along)).toBeCloseTo(5, 1)
		expect(Math.max(...across)).toBeCloseTo(2, 1)
	})
})
