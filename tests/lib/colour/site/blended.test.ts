import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { difference } from '@/lib/colour/difference'
import { blended } from '@/lib/colour/site/blended'
import { hex } from '@/lib/units/hex'
import { hexes } from '../arbitrary'

const [black, white, sun, shade] = [hex('#000000'), hex('#ffffff'), hex('#b98f72'), hex('#7d5a43')]

describe('two colours of a front as one', () => {
	test.each([
		['half of each, where no area is known', { hex: black }, { hex: white }, '#636363'],
		['half of each, where one area is known', { hex: black, share: 0.9 }, { hex: white }, '#636363'],
		['half of each, where neither has any area', { hex: black, share: 0 }, { hex: white, share: 0 }, '#636363'],
		['mostly what is most of the wall', { hex: black, share: 0.03 }, { hex: white, share: 0.09 }, '#aeaeae'],
		['the first alone, where the other has no area', { hex: sun, share: 0.2 }, { hex: shade, share: 0 }, sun],
	])('%s', (_, one, other, is) => expect(blended(one, other)).toBe(is))

	test('lies between them: nearer to either than they are to each other', () => {
		const both = blended({ hex: sun }, { hex: shade })
		const apart = difference(sun, shade)
		expect(Math.max(difference(both, sun), difference(both, shade))).toBeLessThan(0.65 * apart)
	})

	test('a colour with itself stays as it is, and with equal weights the order does not matter', () => {
		fc.assert(
			fc.property(hexes, fc.double({ min: 0, max: 1, noNaN: true }), (of, share) => {
				expect(difference(blended({ hex: of, share }, { hex: of, share: 0.4 }), of)).toBeLessThan(0.5)
			}),
		)
		fc.assert(
			fc.property(hexes, hexes, (one, other) => {
				expect(difference(blended({ hex: one }, { hex: other }), blended({ hex: other }, { hex: one }))).toBeLessThan(
					0.5,
				)
			}),
		)
	})
})
