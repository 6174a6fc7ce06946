import { describe, expect, test } from 'vitest'
import { difference } from '@/lib/colour/difference'
import { siteColours } from '@/lib/colour/site/site-colours'
import { hex } from '@/lib/units/hex'
import { type Faults, inLight, paint } from '../../lib/colour/site/paint'
import { chartPhotos, laid } from './checker'

/** The greatest ΔE00 of a patch, in the light that falls on its middle, from the nearest colour that was found. */
function furthest(colours: readonly string[], faults: Faults): number {
	const { pixels, size } = paint(400, 300, '#000000', laid(colours), faults)
	const found = siteColours(pixels, size)
	expect(found.length).toBe(8)
	const offs = laid(colours).map(({ colour, at: [left, , wide] }) => {
		const light = 1 - ((faults.shade ?? 0) * (left + wide / 2)) / 400
		const lit = hex(inLight(colour, [light, light, light]))
		return Math.min(...found.map((each) => difference(each.hex, lit)))
	})
	return Math.max(...offs)
}

describe('photos of a ColorChecker whose colours are known', () => {
	test.each([
		{ name: 'flat patches', faults: {}, within: 0.001 },
		{ name: 'with the noise of a phone (deviation 5 of 255)', faults: { noise: 5 }, within: 1 },
		{ name: 'with the noise of dusk (deviation 10)', faults: { noise: 10 }, within: 1 },
		{ name: 'with a shadow of a tenth across', faults: { noise: 3, shade: 0.1 }, within: 1 },
		{ name: 'with a shadow of a third across', faults: { noise: 3, shade: 0.33 }, within: 1 },
	])('$name: all 24 are found within ΔE00 $within', ({ faults, within }) => {
		const offs = chartPhotos.map((colours) => furthest(colours, faults))
		expect(Math.max(...offs)).toBeLessThan(within)
	})
})
