import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { difference } from '@/lib/colour/difference'
import { corrected } from '@/lib/colour/site/corrected'
import { siteColours } from '@/lib/colour/site/site-colours'
import { hex } from '@/lib/units/hex'
import { front, inLight, linear, paint } from './paint'

const lamp = [1, 0.72, 0.42] as const
const white = '#d8d8d8'
const patches = [...front.patches, { colour: white, at: [290, 110, 80, 90] }] as const
const onWhite = { x: 330 / 400, y: 155 / 300 }

/** Light that a grey keeps under a lamp (luminance of IEC 61966-2-1). */
const kept = 0.2126 * lamp[0] + 0.7152 * lamp[1] + 0.0722 * lamp[2]

describe('a front in the light of a lamp', () => {
	const seen = paint(400, 300, front.brick, patches, { gains: lamp, noise: 3 })
	const after = corrected(seen.pixels, seen.size, onWhite)
	const found = after.ok ? siteColours(after.pixels, seen.size) : []

	test('has a cast before', () => {
		const before = siteColours(seen.pixels, seen.size)
		const off = [front.brick, ...patches.map(({ colour }) => colour)].map((colour) =>
			Math.min(...before.map((each) => difference(each.hex, hex(inLight(colour, [kept, kept, kept]))))),
		)
		expect(Math.max(...off)).toBeGreaterThan(15)
	})

	test('has its colours back, in the light that fell, within ΔE00 1.5, after something white was tapped', () => {
		for (const colour of [front.brick, ...patches.map(({ colour: of }) => of)]) {
			const so = hex(inLight(colour, [kept, kept, kept]))
			expect(Math.min(...found.map((each) => difference(each.hex, so)))).toBeLessThan(1.5)
		}
	})

	test('keeps its pixels as they came', () => {
		const again = paint(400, 300, front.brick, patches, { gains: lamp, noise: 3 })
		expect(seen.pixels.every((level, index) => level === again.pixels[index])).toBe(true)
	})
})

describe('a tap that tells nothing', () => {
	const at = { x: 0.5, y: 0.5 }
	test.each([
		{ name: 'in the dark', colour: '#181410', says: 'This spot is too dark' },
		{ name: 'on a burnt-out window', colour: '#fffdf0', says: 'This spot is burnt out' },
		{ name: 'on a navy door', colour: '#20344f', says: 'This looks like a colour' },
		{ name: 'on a red sign', colour: '#c03028', says: 'This looks like a colour' },
	])('$name is refused with a reason', ({ colour, says }) => {
		const { pixels, size } = paint(60, 40, colour, [])
		const answer = corrected(pixels, size, at)
		expect(answer.ok ? '' : answer.says).toContain(says)
	})

	test('in a photo without colours is refused', () => {
		const answer = corrected(new Uint8Array(12).fill(128), { width: 4, height: 3, channels: 1 }, at)
		expect(answer).toEqual({ ok: false, says: 'This photo has no colours: there is no cast to correct.' })
	})

	test.each([
		{ x: -3, y: 0 },
		{ x: 1, y: 1 },
		{ x: 2, y: 9 },
	])('beyond the edge ($x, $y) is taken for the edge', (beyond) => {
		const { pixels, size } = paint(30, 20, '#c8c0a8', [])
		expect(corrected(pixels, size, beyond).ok).toBe(true)
	})

	test('in fewer pixels than said is a broken promise', () => {
		expect(() => corrected(new Uint8Array(5), { width: 2, height: 1, channels: 3 }, at)).toThrow('photo: 5 bytes')
	})
})

test('a tap on grey changes nothing, and alpha stays', () => {
	const pixels = Uint8Array.of(150, 150, 150, 77, 20, 200, 90, 255)
	const answer = corrected(pixels, { width: 2, height: 1, channels: 4 }, { x: 0.2, y: 0.5 })
	expect(answer).toEqual({ ok: true, pixels })
})

test('what was tapped is grey afterwards, as light as before', () => {
	const level = fc.integer({ min: 160, max: 235 })
	fc.assert(
		fc.property(level, level, level, (r, g, b) => {
			const answer = corrected(Uint8Array.of(r, g, b), { width: 1, height: 1, channels: 3 }, { x: 0, y: 0 })
			if (!answer.ok) throw new Error(answer.says)
			const [red = 0, green = 0, blue = 0] = answer.pixels
			expect(Math.max(red, green, blue) - Math.min(red, green, blue)).toBeLessThanOrEqual(1)
			const light = (one: number, two: number, three: number) =>
				0.2126 * linear(one / 255) + 0.7152 * linear(two / 255) + 0.0722 * linear(three / 255)
			expect(light(red, green, blue)).toBeCloseTo(light(r, g, b), 2)
		}),
	)
})
