import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { alike } from '@/lib/colour/palette/alike'
import { hex } from '@/lib/units/hex'
import { hexes } from '../arbitrary'

const of = (...colours: string[]) => colours.map(hex)
const copper = of('#b4643a', '#6a2f4b', '#d8d0c1', '#3d6147')

describe('two palettes', () => {
	test.each([
		['the same', copper],
		['in another order', of('#d8d0c1', '#b4643a', '#6a2f4b')],
		['a shade off', of('#b96a3c', '#6d3049', '#d5cec2')],
		['with another green behind', of('#b4643a', '#6a2f4b', '#d8d0c1', '#88a070')],
	])('are alike: %s', (_, other) => expect(alike(copper, other)).toBe(true))

	test.each([
		['another first colour', of('#24365a', '#6a2f4b', '#d8d0c1')],
		['a third that neither has', of('#b4643a', '#6a2f4b', '#34373a')],
		['one colour of three', of('#b4643a')],
		['no colour', []],
	])('are not alike: %s', (_, other) => expect(alike(copper, other)).toBe(false))

	test('are each like themselves, and what one is to the other the other is to it', () => {
		const palette = fc.array(hexes, { minLength: 1, maxLength: 5 })
		fc.assert(fc.property(palette, (one) => alike(one, one)))
		fc.assert(fc.property(palette, palette, (one, other) => alike(one, other) === alike(other, one)))
	})
})
