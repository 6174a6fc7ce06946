import { describe, expect, test } from 'vitest'
import { heightBand, tallestCm } from '@/lib/recipe/height'
import { pot } from '../../lib/recipe/grow/pots'

const at = (of: ReturnType<typeof pot>) => ({ ...of, sillToGlassCm: null })

// How tall a planting is to its pot. University of Illinois Extension, "Choosing and combining plants": it may be twice as
// tall as the visible part of the container. gardensupermart.com: at most 1.5 times. virginialiving.com: as tall as the
// planter, up to twice in open space. Chalet, abc7chicago.com, 16 November 2023: a winter top of twice the container.
describe('pots about as wide as they are high', () => {
	test.each([{ inches: 12 }, { inches: 16 }, { inches: 18 }, { inches: 24 }])(
		'$inches by $inches inches: 1 to 2 times the pot, 1.5 best',
		({ inches }) => {
			const of = at(pot([inches, null, inches]))
			const { lowCm, highCm } = heightBand(of)
			expect(lowCm / of.heightCm).toBeGreaterThan(1)
			expect(highCm / of.heightCm).toBeLessThanOrEqual(2)
			expect(highCm / of.heightCm).toBeGreaterThan(1.9)
			expect(tallestCm(of) / of.heightCm).toBeGreaterThan(1.4)
			expect(tallestCm(of) / of.heightCm).toBeLessThanOrEqual(1.5)
		},
	)
})

// The published rule speaks of the height alone: twice a column would be a mast, twice a bowl a mound. Common practice.
describe('pots that are not', () => {
	test.each([
		{ name: 'a column of 12 by 36 inches', of: pot([12, 12, 36]), least: 0.8, most: 1 },
		{ name: 'a bowl of 24 by 9 inches', of: pot([24, null, 9], { shape: 'bowl' }), least: 2, most: 2.5 },
	])('$name: $least to $most times its height', ({ of, least, most }) => {
		const times = tallestCm(at(of)) / of.heightCm
		expect(times).toBeGreaterThan(least)
		expect(times).toBeLessThan(most)
	})
})
