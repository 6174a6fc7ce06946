import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { forms } from '@/lib/recipe/look'
import { hex } from '@/lib/units/hex'
import { drawnFrom, lineOf, seenForms } from './line'
import { layersOf } from './read-piece'

const odd = fc.constantFrom(null, 0, -7, Number.NaN, Number.POSITIVE_INFINITY, 1e-9, 1e9)
const measures = fc.oneof(odd, fc.double({ min: 0.5, max: 600, noNaN: true }))
const colours = fc.integer({ min: 0, max: 0xffffff }).map((value) => hex(`#${value.toString(16).padStart(6, '0')}`))
const anyLine = fc
	.record({ hex: colours, secondHex: fc.option(colours), lengthCm: measures, acrossCm: measures })
	.chain((look) => fc.constantFrom(...seenForms).map((form) => lineOf(form, look)))

/** Bytes that one variant may have: a picture of two containers is to stay under 80 kB. */
const most = 3000

describe('the pieces of a line', () => {
	test('every form that is seen has a material in the table', () => {
		expect(new Set(['unseen', ...seenForms])).toEqual(new Set(forms))
	})

	test('of what is not seen there are none', () => {
		expect(drawnFrom(lineOf('unseen'))).toEqual([])
	})

	test.each(seenForms)('%s: two to four variants, each unlike the others', (form) => {
		const pieces = drawnFrom(lineOf(form))
		expect(pieces.length).toBeGreaterThanOrEqual(2)
		expect(pieces.length).toBeLessThanOrEqual(4)
		expect(new Set(pieces.map(({ svg }) => svg)).size).toBe(pieces.length)
	})

	test.each(seenForms)('%s: the same from the same dice, another from other dice', (form) => {
		expect(drawnFrom(lineOf(form), 'one')).toEqual(drawnFrom(lineOf(form), 'one'))
		expect(drawnFrom(lineOf(form), 'one')).not.toEqual(drawnFrom(lineOf(form), 'another'))
	})

	test.each(seenForms)('%s: paths of one colour each, few and small, with neither id nor style', (form) => {
		for (const piece of drawnFrom(lineOf(form))) {
			expect(layersOf(piece).length).toBeLessThanOrEqual(20)
			expect(piece.svg.length).toBeLessThanOrEqual(most)
		}
	})

	test('how many of it stand in the pot, its name and its role change nothing', () => {
		for (const form of seenForms)
			expect(drawnFrom(lineOf(form, { count: 31, name: 'another', role: 'accent' }))).toEqual(drawnFrom(lineOf(form)))
	})

	test('whatever the measures and colours, all numbers are finite and nothing grows beyond its size', () => {
		fc.assert(
			fc.property(anyLine, fc.string(), (line, seed) => {
				for (const { svg, heightCm, widthCm } of drawnFrom(line, seed)) {
					expect(svg.replaceAll(/#[0-9a-f]{6}/g, '')).not.toMatch(/NaN|Infinity|undefined|null|\de[-+]?\d/)
					expect(svg.length).toBeLessThanOrEqual(most)
					expect(heightCm).toBeGreaterThan(0)
					expect(heightCm).toBeLessThanOrEqual(500)
					expect(widthCm).toBeGreaterThan(0)
					expect(widthCm).toBeLessThanOrEqual(1300)
				}
			}),
			{ numRuns: 150 },
		)
	})
})
