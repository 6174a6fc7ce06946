import { expect, test } from 'vitest'
import { limb } from '@/lib/picture/piece/growth/band'
import { blade, drop, leaf } from '@/lib/picture/piece/growth/leaf'
import { size } from '@/lib/picture/piece/growth/size'
import { spotAt, walk } from '@/lib/picture/piece/growth/walk'
import { drawn } from '@/lib/picture/piece/ink/drawn'
import { fill } from '@/lib/picture/piece/ink/layer'
import { ahead } from '@/lib/picture/piece/ink/point'
import { hex } from '@/lib/units/hex'

const green = hex('#4b6b3e')

test.each([
	{ name: 'a measure', cm: 31, is: 31 },
	{ name: 'none', cm: null, is: 40 },
	{ name: 'nought', cm: 0, is: 40 },
	{ name: 'below nought', cm: -3, is: 40 },
	{ name: 'not a number', cm: Number.NaN, is: 40 },
	{ name: 'too small to draw', cm: 0.3, is: 5 },
	{ name: 'absurd', cm: 1e9, is: 90 },
	{ name: 'without end', cm: Number.POSITIVE_INFINITY, is: 90 },
])('size: $name', ({ cm, is }) => {
	expect(size(cm, 40, 5, 90)).toBe(is)
})

test('a heading of 0 goes up, one of a quarter turn to the right', () => {
	expect(ahead([2, 3], 0, 5)).toEqual([2, -2])
	const [x, y] = ahead([2, 3], Math.PI / 2, 5)
	expect(x).toBeCloseTo(7, 9)
	expect(y).toBeCloseTo(3, 9)
})

test('a straight walk ends as far away as it is long; half way along it one is half way there', () => {
	const way = walk({ from: [1, 0], heading: 0, lengthCm: 30, legs: 6, turn: () => 0 })
	expect(way.length).toBe(7)
	expect(spotAt(way, 1).at).toEqual([1, -30])
	expect(spotAt(way, 0.5).at).toEqual([1, -15])
	expect(spotAt(way, 7)).toEqual(spotAt(way, 1))
})

test('a blade is as long and as wide as asked; so is a drop; so is a limb', () => {
	const sizes = [
		{ shape: blade(leaf([0, 0], 0, 12, 5)), wide: 5 },
		{ shape: drop([0, 0], 0, 12, 5), wide: 5 },
		{ shape: limb(walk({ from: [0, 0], heading: 0, lengthCm: 12, legs: 4, turn: () => 0 }), 5, 3), wide: 5 },
	]
	for (const { shape, wide } of sizes) {
		const { heightCm, widthCm } = drawn([fill(green, [shape])])
		expect(heightCm).toBeCloseTo(12, 0)
		expect(Math.abs(widthCm - wide)).toBeLessThan(0.25)
	}
})
