import { describe, expect, test } from 'vitest'
import { bodyCm, inner, rimCm } from '@/lib/container/inner'
import { vessel } from './sample'

const box = vessel({
	shape: 'window box',
	topCm: 91,
	topDepthCm: 23,
	bottomCm: 88,
	bottomDepthCm: 20,
	heightCm: 21,
	wallCm: 2,
})
const urn = vessel({ shape: 'urn', topCm: 50, bottomCm: 28, heightCm: 45, wallCm: 1.5 })

describe('inner measures', () => {
	test('a box within its boards', () => {
		expect(inner(box)).toEqual({ topCm: 87, topDepthCm: 19, bottomCm: 84, bottomDepthCm: 16, heightCm: 19 })
	})

	test('a round pot is as deep as it is wide', () => {
		const pot = vessel({ topCm: 46, bottomCm: 33, heightCm: 41, wallCm: 2.5 })
		expect(inner(pot)).toEqual({ topCm: 41, topDepthCm: 41, bottomCm: 28, bottomDepthCm: 28, heightCm: 38.5 })
	})

	test('a box of which only the front was measured is square', () => {
		const square = vessel({ shape: 'square', topCm: 60, bottomCm: 52, wallCm: 1 })
		expect(inner(square)).toMatchObject({ topDepthCm: 58, bottomDepthCm: 50 })
	})

	// Three fifths of an urn are bowl: common practice, no published source.
	test('an urn holds in its bowl alone', () => {
		expect(bodyCm(urn)).toBe(27)
		expect(inner(urn)).toMatchObject({ topCm: 47, bottomCm: 25, heightCm: 25.5 })
		expect(bodyCm(box)).toBe(21)
	})
})

describe('the rim', () => {
	test.each([
		{ name: 'of a round pot, a circle', of: vessel({ topCm: 44, wallCm: 1 }), cm: Math.PI * 42 },
		{ name: 'of an urn, a circle too', of: urn, cm: Math.PI * 47 },
		{ name: 'of a box, its four sides', of: box, cm: 2 * (87 + 19) },
	])('$name', ({ of, cm }) => {
		expect(rimCm(of)).toBeCloseTo(cm, 9)
	})
})
