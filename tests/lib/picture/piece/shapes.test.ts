import { describe, expect, test } from 'vitest'
import { drawnFrom, lineOf, type SeenForm } from './line'
import { layersOf } from './read-piece'

const outlines = (form: SeenForm, lengthCm: number | null, acrossCm: number | null): number => {
	const [piece] = drawnFrom(lineOf(form, { lengthCm, acrossCm, secondHex: null }))
	return piece === undefined ? 0 : layersOf(piece).flatMap((layer) => layer.outlines).length
}

/** Where proportions tell two plants of one form apart (common practice, no published source). */
const told: readonly { form: SeenForm; one: string; a: [number, number]; other: string; b: [number, number] }[] = [
	{ form: 'plume', one: 'a stem of pampas', a: [77, 13], other: 'a plant of fountain grass', b: [85, 60] },
	{ form: 'seed head', one: 'an allium', a: [55, 12], other: 'an ear of wheat', b: [80, 4] },
	{ form: 'pod', one: 'a lotus pod', a: [33, 10], other: 'a poppy capsule', b: [35, 4] },
	{ form: 'trailing', one: 'ivy', a: [45, 25], other: 'a strand of eucalyptus', b: [48, 14] },
	{ form: 'cone', one: 'a short cone', a: [9, 7], other: 'a sugar pine cone', b: [30, 11] },
]

describe('the shape of a piece', () => {
	test.each(told)('$form: $one is not drawn as $other', ({ form, a, b }) => {
		expect(outlines(form, ...a)).not.toBe(outlines(form, ...b))
	})

	test('the number of strokes does not grow with the size', () => {
		for (const form of ['grass', 'short needle', 'fern', 'foliage'] as const)
			expect(outlines(form, 120, 120)).toBe(outlines(form, 30, 30))
	})

	test('a plant that spreads wider is drawn wider', () => {
		for (const form of ['grass', 'foliage', 'fern', 'flat fan', 'evergreen top', 'round flowers'] as const) {
			const wide = (acrossCm: number) => drawnFrom(lineOf(form, { lengthCm: 40, acrossCm }))[0]?.widthCm ?? 0
			expect(wide(44)).toBeGreaterThan(wide(24))
		}
	})
})
