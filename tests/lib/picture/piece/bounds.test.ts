import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import type { Piece } from '@/lib/picture/piece'
import { drawnFrom, lineOf, type SeenForm, seenForms } from './line'
import { layersOf, reachOf } from './read-piece'

/** Half a step of the coarsest grid of a piece of that size, and what lies between two points that were measured. */
const slack = ({ heightCm, widthCm }: Piece): number => 0.012 * Math.max(heightCm, widthCm)

/** What may lie beyond the foot, as a share of the height: low leaves of a plant, the first leaves of what hangs. */
const beyondFoot = 0.22

function expectWithin(piece: Piece): void {
	const { up, down, side } = reachOf(piece)
	const [out, back] = piece.hangs ? [down, up] : [up, down]
	expect(Math.abs(out - piece.heightCm)).toBeLessThanOrEqual(slack(piece))
	expect(Math.abs(side * 2 - piece.widthCm)).toBeLessThanOrEqual(2 * slack(piece))
	expect(back).toBeLessThanOrEqual(beyondFoot * piece.heightCm + slack(piece))
}

const areaOf = (points: readonly (readonly [number, number])[]): number =>
	points.reduce((sum, [x, y], index) => {
		const [nextX, nextY] = points[(index + 1) % points.length] ?? [0, 0]
		return sum + x * nextY - nextX * y
	}, 0)

describe('the bounds of a piece', () => {
	test.each(seenForms)('%s: it reaches as far as it says, and hardly beyond its foot', (form) => {
		for (const piece of drawnFrom(lineOf(form))) expectWithin(piece)
	})

	test('at any size', () => {
		const cm = fc.option(fc.double({ min: 2, max: 300, noNaN: true }))
		fc.assert(
			fc.property(fc.constantFrom(...seenForms), cm, cm, fc.string(), (form, lengthCm, acrossCm, seed) => {
				for (const piece of drawnFrom(lineOf(form, { lengthCm, acrossCm }), seed)) expectWithin(piece)
			}),
			{ numRuns: 120 },
		)
	})

	test('only what trails hangs, and only what arches leans, to the right', () => {
		const those = (which: 'hangs' | 'leans') =>
			seenForms.filter((form) => drawnFrom(lineOf(form)).some((piece) => piece[which]))
		expect(those('hangs')).toEqual(['trailing'])
		expect(those('leans')).toEqual(['arching stems'])
		for (const piece of drawnFrom(lineOf('arching stems'))) {
			const xs = layersOf(piece).flatMap(({ outlines }) => outlines.flatMap(({ points }) => points.map(([x]) => x)))
			expect(Math.max(...xs)).toBeGreaterThan(-4 * Math.min(...xs))
		}
	})

	test.each(seenForms)('%s: what is filled in one path winds one way, so that no overlap becomes a hole', (form) => {
		for (const piece of drawnFrom(lineOf(form)))
			for (const { fill, outlines } of layersOf(piece)) {
				if (fill === null) continue
				const areas = outlines.map(({ points }) => areaOf(points)).filter((area) => Math.abs(area) > 1e-3)
				expect(areas.filter((area) => area < 0)).toEqual([])
			}
	})
})

/** A live plant and a stem stand as high as their look says; an ornament is as wide as it says. */
const heights: readonly { form: SeenForm; is: string; lengthCm: number }[] = [
	{ form: 'straight stems', is: 'red dogwood', lengthCm: 107 },
	{ form: 'twisting stems', is: 'curly willow', lengthCm: 118 },
	{ form: 'logs', is: 'a birch log', lengthCm: 46 },
	{ form: 'evergreen top', is: 'a spruce top', lengthCm: 91 },
	{ form: 'grass', is: 'a sedge', lengthCm: 45 },
	{ form: 'sword leaves', is: 'a cordyline', lengthCm: 61 },
	{ form: 'flower spike', is: 'a salvia', lengthCm: 47 },
	{ form: 'plume', is: 'pampas', lengthCm: 77 },
	{ form: 'pod', is: 'a lotus pod', lengthCm: 33 },
	{ form: 'seed head', is: 'an allium', lengthCm: 55 },
	{ form: 'round flowers', is: 'a chrysanthemum', lengthCm: 36 },
	{ form: 'daisy flowers', is: 'a marguerite', lengthCm: 29 },
	{ form: 'bulb flowers', is: 'tulips', lengthCm: 37 },
	{ form: 'foliage', is: 'a heuchera', lengthCm: 26 },
	{ form: 'fern', is: 'a fern', lengthCm: 41 },
	{ form: 'trailing', is: 'ivy', lengthCm: 39 },
]

describe('the height of a piece', () => {
	test.each(heights)('$is of $lengthCm cm reaches that far', ({ form, lengthCm }) => {
		for (const { heightCm } of drawnFrom(lineOf(form))) expect(heightCm).toBeCloseTo(lengthCm, 6)
	})

	test.each([
		{ form: 'flat fan', lengthCm: 50 },
		{ form: 'long needle', lengthCm: 44 },
		{ form: 'short needle', lengthCm: 49 },
		{ form: 'scale leaf', lengthCm: 40 },
		{ form: 'broad leaf', lengthCm: 42 },
		{ form: 'small leaf', lengthCm: 38 },
		{ form: 'berries', lengthCm: 60 },
	] as const)('a cut tip, $form, of $lengthCm cm bends: it reaches a little more or less', ({ form, lengthCm }) => {
		for (const { heightCm } of drawnFrom(lineOf(form))) {
			expect(heightCm).toBeGreaterThan(lengthCm * 0.9)
			expect(heightCm).toBeLessThan(lengthCm * 1.1)
		}
	})

	test('a wand that arches reaches less far up than it is long, and much farther to the side', () => {
		for (const { heightCm, widthCm } of drawnFrom(lineOf('arching stems'))) {
			expect(heightCm).toBeLessThan(71 * 0.85)
			expect(widthCm / 2).toBeGreaterThan(71 * 0.3)
		}
	})

	test.each([
		{ form: 'globe', acrossCm: 7 },
		{ form: 'cluster', acrossCm: 17 },
		{ form: 'ribbon', acrossCm: 25 },
		{ form: 'pumpkin', acrossCm: 19 },
		{ form: 'cone', acrossCm: 8 },
	] as const)('a $form of $acrossCm cm is that wide', ({ form, acrossCm }) => {
		for (const { widthCm } of drawnFrom(lineOf(form))) {
			expect(widthCm).toBeGreaterThan(acrossCm * 0.88)
			expect(widthCm).toBeLessThan(acrossCm * 1.16)
		}
	})

	test('without measures every form has a size that is usual for it', () => {
		for (const form of seenForms) {
			const pieces = drawnFrom(lineOf(form, { lengthCm: null, acrossCm: null }))
			for (const { heightCm } of pieces) {
				expect(heightCm).toBeGreaterThan(6)
				expect(heightCm).toBeLessThan(110)
			}
		}
	})
})
