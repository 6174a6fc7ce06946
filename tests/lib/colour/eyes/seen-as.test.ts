import { convertLrgbToRgb, convertRgbToLrgb } from 'culori'
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { difference } from '@/lib/colour/difference'
import { deficiencies } from '@/lib/colour/eyes/deficiency'
import { seenAs, seenMatrix } from '@/lib/colour/eyes/seen-as'
import { hexOf, rgbOf } from '@/lib/colour/rgb'
import { hex } from '@/lib/units/hex'
import { hexes } from '../arbitrary'

describe('a colour seen without one kind of cones', () => {
	const [winterberry, cedar] = [hex('#8e2d1f'), hex('#566b3d')]
	test.each([
		{ deficiency: 'protan', red: winterberry, green: cedar },
		{ deficiency: 'deutan', red: winterberry, green: cedar },
	] as const)('$deficiency: red berries come nearer to greens', ({ deficiency, red, green }) => {
		const seen = difference(seenAs(red, deficiency), seenAs(green, deficiency))
		expect(seen).toBeLessThan(0.7 * difference(red, green))
	})

	test('tritan: red berries stay as far from greens, and yellow comes nearer to white', () => {
		const apart = difference(seenAs(winterberry, 'tritan'), seenAs(cedar, 'tritan'))
		expect(apart).toBeGreaterThan(0.7 * difference(winterberry, cedar))
		const [yellow, white] = [hex('#e8d44d'), hex('#f4f2ec')]
		expect(difference(seenAs(yellow, 'tritan'), seenAs(white, 'tritan'))).toBeLessThan(0.7 * difference(yellow, white))
	})

	test('greys stay as they are', () => {
		for (const deficiency of deficiencies)
			for (const grey of ['#000000', '#2f2f2f', '#808080', '#d9d9d9', '#ffffff'])
				expect(difference(seenAs(hex(grey), deficiency), hex(grey))).toBeLessThan(0.5)
	})

	test('every colour is seen as some colour of the screen', () => {
		fc.assert(
			fc.property(hexes, fc.constantFrom(...deficiencies), (of, deficiency) => {
				expect(seenAs(of, deficiency)).toMatch(/^#[0-9a-f]{6}$/)
			}),
		)
	})

	test('a picture’s matrix says the same as the colour by itself', () => {
		fc.assert(
			fc.property(hexes, fc.constantFrom(...deficiencies), (of, deficiency) => {
				const { r, g, b } = convertRgbToLrgb(rgbOf(of))
				const [red = 0, green = 0, blue = 0] = seenMatrix(deficiency).map(
					([ofRed = 0, ofGreen = 0, ofBlue = 0]) => ofRed * r + ofGreen * g + ofBlue * b,
				)
				const seen = hexOf(convertLrgbToRgb({ r: red, g: green, b: blue }))
				expect(difference(seen, seenAs(of, deficiency))).toBeLessThan(0.5)
			}),
		)
	})
})
