import { describe, expect, test } from 'vitest'
import { shapes, stands } from '@/lib/container/card'
import { asked, shapeWords, standWords } from '@/lib/container/words'

describe('shapes in words', () => {
	test('each shape and each stand has its own', () => {
		expect(new Set(shapes.map((shape) => shapeWords[shape])).size).toBe(shapes.length)
		expect(new Set(stands.map((stand) => standWords[stand])).size).toBe(stands.length)
	})

	test.each([
		{ shape: 'round', fields: ['topCm', 'bottomCm', 'heightCm'] },
		{ shape: 'bowl', fields: ['topCm', 'bottomCm', 'heightCm'] },
		{ shape: 'window box', fields: ['topCm', 'topDepthCm', 'bottomCm', 'bottomDepthCm', 'heightCm'] },
	] as const)('$shape asks for $fields', ({ shape, fields }) => {
		expect(asked(shape).map(({ field }) => field)).toEqual(fields)
	})

	test('an urn is measured whole', () => {
		expect(asked('urn').map(({ label }) => label)).toEqual([
			'Across the rim',
			'Across the foot',
			'Height, foot and stem included',
		])
	})
})
