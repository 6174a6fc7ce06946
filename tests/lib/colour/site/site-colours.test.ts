import { describe, expect, test } from 'vitest'
import { difference } from '@/lib/colour/difference'
import type { PhotoSize } from '@/lib/colour/site/photo'
import { type FoundColour, siteColours } from '@/lib/colour/site/site-colours'
import { hex } from '@/lib/units/hex'
import { bytes, front, inLight, type Patch, paint } from './paint'

const nearest = (found: readonly FoundColour[], colour: string) =>
	Math.min(...found.map((each) => difference(each.hex, hex(colour))))

const expected = [front.brick, ...front.patches.map(({ colour }) => colour)]

describe('a shop front', () => {
	const { pixels, size } = paint(400, 300, front.brick, front.patches)
	const found = siteColours(pixels, size)

	test('gives the colours that it was painted with and no others, the largest area first', () => {
		expect(found.map((each) => each.hex)).toEqual(['#9b5f4a', '#88837a', '#6d3049', '#20344f', '#e6dfcf', '#b3924c'])
	})

	test('each with its share of the front to within a hundredth', () => {
		const areas = [0, 45 * 400, 36 * 400, 80 * 165 - 480, 9000, 480]
		areas[0] = 120_000 - areas.reduce((sum, area) => sum + area, 0)
		for (const [index, area] of areas.entries()) expect(found[index]?.share).toBeCloseTo(area / 120_000, 2)
	})

	test('each with a spot on it, at least three pixels from its edge', () => {
		for (const { hex: of, spot } of found)
			for (const [right, down] of [
				[0, 0],
				[3, 0],
				[-3, 0],
				[0, 3],
				[0, -3],
			] as const) {
				const at = (Math.floor(spot.y * 300) + down) * 400 + Math.floor(spot.x * 400) + right
				expect([...pixels.slice(at * 3, at * 3 + 3)]).toEqual(bytes(of))
			}
	})

	test('the same photo, the same answer', () => {
		expect(siteColours(Uint8ClampedArray.from(pixels), { ...size })).toEqual(found)
	})
})

describe('the same front', () => {
	test.each([
		{ name: 'with the noise of a phone (deviation 5)', faults: { noise: 5 }, within: 0.7 },
		{ name: 'with the noise of dusk (deviation 12)', faults: { noise: 12 }, within: 1.5 },
		{ name: 'with a shadow that takes a fifth of the light at one side', faults: { noise: 5, shade: 0.2 }, within: 4 },
	])('$name: every colour of it is found within ΔE00 $within', ({ faults, within }) => {
		const { pixels, size } = paint(400, 300, front.brick, front.patches, faults)
		const found = siteColours(pixels, size)
		for (const colour of expected) expect(nearest(found, colour)).toBeLessThan(within)
		expect(found.length).toBe(expected.length)
	})

	test('in deep shadow at one side: each colour is found in some light that falls on it', () => {
		const { pixels, size } = paint(400, 300, front.brick, front.patches, { noise: 5, shade: 0.6 })
		const found = siteColours(pixels, size)
		const lights = [1, 0.9, 0.8, 0.7, 0.6, 0.5, 0.4].map((light) => [light, light, light] as const)
		for (const { hex: of } of found) {
			const near = expected.flatMap((colour) => lights.map((gains) => difference(of, hex(inLight(colour, gains)))))
			expect(Math.min(...near)).toBeLessThan(4)
		}
	})
})

describe('a wall of bricks, no two of one colour, in grey mortar', () => {
	const bricks = Array.from({ length: 12 * 10 }, (_, index): Patch => {
		const light = 0.75 + ((index * 37) % 50) / 100
		const [column, row] = [index % 10, Math.floor(index / 10)]
		return { colour: inLight(front.brick, [light, light, light]), at: [40 * column, 25 * row, 36, 21] }
	})
	const { pixels, size } = paint(400, 300, '#b5ab9c', [...bricks, ...front.patches], { noise: 5 })
	const found = siteColours(pixels, size)

	test('is one colour, its mean, and leaves room for the letter box', () => {
		for (const colour of [...expected, '#b5ab9c']) expect(nearest(found, colour)).toBeLessThan(1.5)
		expect(found.length).toBeLessThanOrEqual(8)
	})
})

const stripes = (colours: readonly string[]): Patch[] =>
	colours.map((colour, index) => ({ colour, at: [index * 20, 0, 20, 90] }))

describe('what is one colour and what is none', () => {
	test('two paints that hardly differ are one, two that do are two', () => {
		const [wall, like, unlike] = ['#88837a', '#8b867c', '#9b968c']
		expect(difference(hex(wall), hex(like))).toBeLessThan(5)
		expect(difference(hex(wall), hex(unlike))).toBeGreaterThan(5)
		const count = (other: string) => {
			const { pixels, size } = paint(120, 90, wall, [{ colour: other, at: [60, 0, 60, 90] }])
			return siteColours(pixels, size).length
		}
		expect(count(like)).toBe(1)
		expect(count(unlike)).toBe(2)
	})

	test('a speck is dropped, a door handle is not', () => {
		const speck = paint(400, 300, '#9b5f4a', [{ colour: '#f0e030', at: [201, 150, 6, 6] }])
		expect(siteColours(speck.pixels, speck.size).map((each) => each.hex)).toEqual(['#9b5f4a'])
		const handle = paint(400, 300, '#9b5f4a', [{ colour: '#b3924c', at: [201, 150, 9, 24] }])
		expect(nearest(siteColours(handle.pixels, handle.size), '#b3924c')).toBeLessThan(1)
	})

	test('of ten colours the eight largest', () => {
		const ten = [
			'#101820',
			'#c03028',
			'#2858a8',
			'#f0d848',
			'#387048',
			'#e8e4dc',
			'#783068',
			'#e08838',
			'#6cb8c8',
			'#9a9a94',
		]
		const patches = stripes(ten).map(({ colour, at: [x, y, w] }, index) => ({
			colour,
			at: [x, y, w, 90 - 4 * index] as const,
		}))
		const { pixels, size } = paint(200, 90, '#101820', patches)
		const found = siteColours(pixels, size)
		expect(found.map((each) => each.hex)).toEqual(ten.slice(0, 8))
	})

	test('a blend along a border is no colour of the front', () => {
		const { pixels, size } = paint(400, 300, '#f4f0e6', [{ colour: '#20344f', at: [101, 0, 98, 300] }])
		expect(siteColours(pixels, size).map((each) => each.hex)).toEqual(['#f4f0e6', '#20344f'])
	})
})

test('fine checks of black and white are the grey of half the light, as from across the street', () => {
	// Half of full light is 0.7354 of sRGB (IEC 61966-2-1): level 188, not 128.
	const checks = Uint8Array.from({ length: 320 * 240 * 3 }, (_, index) => {
		const [x, y] = [Math.floor(index / 3) % 320, Math.floor(index / 960)]
		return (x + y) % 2 === 0 ? 255 : 0
	})
	expect(siteColours(checks, { width: 320, height: 240, channels: 3 }).map((each) => each.hex)).toEqual(['#bcbcbc'])
})

const opaque = (width: number, height: number): PhotoSize => ({ width, height, channels: 3 })

describe('odd photos', () => {
	const one = { hex: '#b5653a', share: 1 }
	const copper = (count: number) =>
		Uint8Array.from({ length: count * 3 }, (_, index) => [0xb5, 0x65, 0x3a][index % 3] ?? 0)

	test.each([
		{ name: 'of one pixel', width: 1, height: 1 },
		{ name: 'of one colour', width: 31, height: 17 },
		{ name: 'one pixel high', width: 700, height: 1 },
		{ name: 'one pixel wide', width: 1, height: 333 },
	])('$name: that colour, all of it', ({ width, height }) => {
		const found = siteColours(copper(width * height), opaque(width, height))
		expect(found).toMatchObject([one])
		for (const { spot } of found) {
			expect(spot.x).toBeGreaterThan(0)
			expect(spot.y).toBeLessThan(1)
		}
	})

	const withAlpha = (alphas: readonly number[]) =>
		Uint8Array.from(
			alphas.flatMap((alpha, index) => (index % 2 === 0 ? [0x20, 0x34, 0x4f, alpha] : [0xb5, 0x65, 0x3a, alpha])),
		)

	test('without one opaque pixel: no colour', () => {
		expect(siteColours(withAlpha([0, 0, 0, 0]), { width: 2, height: 2, channels: 4 })).toEqual([])
		expect(siteColours(Uint8Array.of(90, 0), { width: 1, height: 1, channels: 2 })).toEqual([])
	})

	test('what is less than half opaque is not there, what is more is', () => {
		const size = { width: 1, height: 1, channels: 4 } as const
		expect(siteColours(Uint8Array.of(0xb5, 0x65, 0x3a, 127), size)).toEqual([])
		expect(siteColours(Uint8Array.of(0xb5, 0x65, 0x3a, 128), size)).toMatchObject([one])
	})

	test('cut out: what is cut away has no colour, and no share', () => {
		const found = siteColours(withAlpha([0, 255, 0, 255, 0, 255]), { width: 2, height: 3, channels: 4 })
		expect(found).toMatchObject([one])
	})

	test('in greys: the same as the grey of three channels', () => {
		const levels = Array.from({ length: 60 * 40 }, (_, index) => (index % 60 < 20 ? 40 : index % 60 < 45 ? 130 : 220))
		const size = { width: 60, height: 40 }
		const three = siteColours(Uint8Array.from(levels.flatMap((level) => [level, level, level])), {
			...size,
			channels: 3,
		})
		expect(three.map((each) => each.hex)).toEqual(['#828282', '#282828', '#dcdcdc'])
		expect(siteColours(Uint8Array.from(levels), { ...size, channels: 1 })).toEqual(three)
		const two = Uint8Array.from(levels.flatMap((level) => [level, 255]))
		expect(siteColours(two, { ...size, channels: 2 })).toEqual(three)
	})

	test.each([
		{ name: 'fewer pixels than said', bytes: 11, size: opaque(2, 2) },
		{ name: 'more pixels than said', bytes: 13, size: opaque(2, 2) },
		{ name: 'no width', bytes: 0, size: opaque(0, 5) },
		{ name: 'half a pixel', bytes: 3, size: opaque(0.5, 2) },
		{ name: 'a width that is no number', bytes: 3, size: opaque(Number.NaN, 1) },
	])('$name is a broken promise', ({ bytes: count, size }) => {
		expect(() => siteColours(new Uint8Array(count), size)).toThrow(`photo: ${count} bytes are not`)
	})
})
