import { describe, expect, test } from 'vitest'
import { isRound, shapes, usualHeadspaceCm, usualWallCm, walls } from '@/lib/container/card'

describe('the card of a container', () => {
	test('what is turned on a wheel is round, what is built of boards is not', () => {
		const round = shapes.filter(isRound)
		expect(round).toEqual(['round', 'bowl', 'urn'])
		expect(shapes.filter((shape) => !isRound(shape))).toEqual([
			'square',
			'rectangular',
			'trough',
			'window box',
			'column',
		])
	})

	// Common practice, no published source.
	test('walls are as thick as they usually are', () => {
		expect(usualWallCm).toEqual({ metal: 0.3, resin: 1, wood: 2, terracotta: 2.5, 'cast stone': 4 })
		expect(Object.keys(usualWallCm)).toEqual([...walls])
		expect(usualHeadspaceCm).toBe(5)
	})
})
