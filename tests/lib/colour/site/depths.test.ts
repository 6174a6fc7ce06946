import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { depthsOf } from '@/lib/colour/site/depths'

const digits = (...rows: string[]) => [...rows.join('')].map(Number)

describe('how deep in its region a cell lies', () => {
	test('a king’s steps from the next region', () => {
		const labels = digits('1111111', '1111111', '1110111', '1111111', '1111111')
		expect(depthsOf(labels, 7)).toEqual(digits('3222223', '3211123', '3211123', '3211123', '3222223'))
	})

	test('without another region there is no edge', () => {
		expect(new Set(depthsOf([4, 4, 4, 4, 4, 4], 3))).toEqual(new Set([Number.POSITIVE_INFINITY]))
	})

	test('is the least distance to a cell of another label, counted cell by cell', () => {
		const grids = fc.integer({ min: 1, max: 9 }).chain((columns) =>
			fc.record({
				columns: fc.constant(columns),
				labels: fc
					.integer({ min: 1, max: 8 })
					.chain((rows) =>
						fc.array(fc.integer({ min: 0, max: 2 }), { minLength: columns * rows, maxLength: columns * rows }),
					),
			}),
		)
		fc.assert(
			fc.property(grids, ({ columns, labels }) => {
				const counted = labels.map((label, at) =>
					labels.reduce((least, other, place) => {
						if (other === label) return least
						const across = Math.abs((at % columns) - (place % columns))
						const down = Math.abs(Math.floor(at / columns) - Math.floor(place / columns))
						return Math.min(least, Math.max(across, down))
					}, Number.POSITIVE_INFINITY),
				)
				expect(depthsOf(labels, columns)).toEqual(counted)
			}),
			{ numRuns: 300 },
		)
	})
})
