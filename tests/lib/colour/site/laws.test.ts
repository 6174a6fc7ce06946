import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { difference } from '@/lib/colour/difference'
import { siteColours } from '@/lib/colour/site/site-colours'
import { hex } from '@/lib/units/hex'
import { hexes } from '../arbitrary'
import { type Painted, type Patch, paint } from './paint'

const patch: fc.Arbitrary<Patch> = fc.record({
	colour: hexes,
	at: fc.tuple(
		fc.integer({ min: 0, max: 90 }),
		fc.integer({ min: 0, max: 70 }),
		fc.integer({ min: 1, max: 60 }),
		fc.integer({ min: 1, max: 60 }),
	),
})

/** Fronts of up to seven colours, with and without noise, small enough that a cell is a pixel, and not when doubled. */
const fronts = fc.record({
	ground: hexes,
	patches: fc.array(patch, { maxLength: 6 }),
	noise: fc.constantFrom(0, 0, 6),
	width: fc.integer({ min: 107, max: 112 }),
	height: fc.integer({ min: 20, max: 60 }),
})
type Front = typeof fronts extends fc.Arbitrary<infer Drawn> ? Drawn : never

const painted = ({ ground, patches, noise, width, height }: Front): Painted =>
	paint(width, height, ground, patches, { noise })

/** The same pixels elsewhere: `from` says for a place of the new picture where it was. */
function moved(
	{ pixels, size }: Painted,
	width: number,
	height: number,
	from: (x: number, y: number) => readonly [number, number],
): Painted {
	const to = Array.from({ length: width * height }, (_, index) => {
		const [x, y] = from(index % width, Math.floor(index / width))
		const start = (y * size.width + x) * 3
		return [...pixels.subarray(start, start + 3)]
	})
	return { pixels: Uint8Array.from(to.flat()), size: { width, height, channels: 3 } }
}

const found = ({ pixels, size }: Painted) => siteColours(pixels, size)
const told = (of: Painted) =>
	found(of)
		.map(({ hex: colour, share }) => `${colour} ${share}`)
		.toSorted()

const runs = { numRuns: 30 }

describe('the colours of any front', () => {
	test('are one to eight, in the order of their shares, which together are no more than the whole', () => {
		fc.assert(
			fc.property(fronts, (drawn) => {
				const front = painted(drawn)
				const all = found(front)
				expect(all.length).toBeGreaterThanOrEqual(1)
				expect(all.length).toBeLessThanOrEqual(8)
				const shares = all.map(({ share }) => share)
				expect(shares).toEqual(shares.toSorted((a, b) => b - a))
				expect(shares.reduce((sum, share) => sum + share, 0)).toBeLessThanOrEqual(1 + 1e-9)
			}),
			runs,
		)
	})

	test('are at least ΔE00 5 apart', () => {
		fc.assert(
			fc.property(fronts, (drawn) => {
				const front = painted(drawn)
				const all = found(front)
				for (const [index, one] of all.entries())
					for (const other of all.slice(index + 1)) expect(difference(one.hex, other.hex)).toBeGreaterThanOrEqual(5)
			}),
			runs,
		)
	})

	test('are seen where their spots are', () => {
		fc.assert(
			fc.property(fronts, (drawn) => {
				const front = painted(drawn)
				const { width, height } = front.size
				for (const { hex: colour, spot } of found(front)) {
					const [x, y] = [Math.floor(spot.x * width), Math.floor(spot.y * height)]
					expect(x >= 0 && x < width && y >= 0 && y < height).toBe(true)
					const around = [-1, 0, 1].flatMap((down) => [-1, 0, 1].map((right) => [x + right, y + down] as const))
					const near = around
						.filter(([column, row]) => column >= 0 && row >= 0 && column < width && row < height)
						.map(([column, row]) => {
							const start = (row * width + column) * 3
							const [r = 0, g = 0, b = 0] = front.pixels.subarray(start, start + 3)
							return difference(colour, hex(`#${((r << 16) | (g << 8) | b).toString(16).padStart(6, '0')}`))
						})
					expect(Math.min(...near)).toBeLessThan(8)
				}
			}),
			runs,
		)
	})

	test('stay the same in the mirror, upside down and lying on its side', () => {
		fc.assert(
			fc.property(fronts, (drawn) => {
				const front = painted(drawn)
				const { width, height } = front.size
				const here = told(front)
				expect(told(moved(front, width, height, (x, y) => [width - 1 - x, y]))).toEqual(here)
				expect(told(moved(front, width, height, (x, y) => [x, height - 1 - y]))).toEqual(here)
				expect(told(moved(front, height, width, (x, y) => [y, x]))).toEqual(here)
			}),
			runs,
		)
	})

	test('stay the same, at the same spots, when every pixel becomes four or nine', () => {
		fc.assert(
			fc.property(fronts, fc.constantFrom(2, 3), (drawn, by) => {
				const front = painted(drawn)
				const { width, height } = front.size
				const larger = moved(front, width * by, height * by, (x, y) => [Math.floor(x / by), Math.floor(y / by)])
				const [small, large] = [found(front), found(larger)]
				expect(large.map(({ hex: colour, share }) => [colour, share])).toEqual(
					small.map(({ hex: colour, share }) => [colour, share]),
				)
				for (const [index, { spot }] of small.entries()) {
					expect(large[index]?.spot.x).toBeCloseTo(spot.x, 9)
					expect(large[index]?.spot.y).toBeCloseTo(spot.y, 9)
				}
			}),
			runs,
		)
	})
})
