import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { deficiencies } from '@/lib/colour/eyes/deficiency'
import { eyeWords, stripsOf } from '@/lib/colour/eyes/eye-words'
import { seenAs } from '@/lib/colour/eyes/seen-as'
import type { Behind } from '@/lib/colour/losses'
import type { DesignMaterial } from '@/lib/recipe/traits'
import { hex } from '@/lib/units/hex'
import { hexes } from '../arbitrary'
import { material, winter } from '../material'

const line = (of: DesignMaterial) => ({ material: of, role: of.role, count: 4 })
const standing = (wall: string): Behind => ({ wall: { kind: 'clapboard', hex: hex(wall) }, door: null })
const chip = (name: string, colour: string) => ({ name, hex: hex(colour) })
const redBerries = material(31, 'red berries', '#8f2c2f')

describe('what runs together for colour-blind eyes', () => {
	test.each([
		{
			name: 'copper and moss, without red or green cones',
			palette: [chip('Copper', '#b4643a'), chip('Moss', '#6b7440'), chip('Birch', '#d8d0c1')],
			says: ['Eyes without red or green cones hardly tell Copper and Moss apart.'],
		},
		{
			name: 'copper and rose, without blue cones',
			palette: [chip('Copper', '#b4643a'), chip('Rose', '#b3596b')],
			says: ['Eyes without blue cones hardly tell Copper and Rose apart.'],
		},
		{
			name: 'a colour without a name by what it is called',
			palette: [chip('', '#6c513f'), chip('Dogwood', '#8f2c2f')],
			says: [expect.stringMatching(/^Eyes without red or green cones hardly tell .*brown.* and Dogwood apart\.$/)],
		},
		{ name: 'nothing of bone and charcoal', palette: [chip('Bone', '#e9e2d2'), chip('Charcoal', '#34373a')], says: [] },
		{ name: 'nothing that nobody tells apart', palette: [chip('Moss', '#6b7440'), chip('Fern', '#6d7541')], says: [] },
	])('$name', ({ palette, says }) => expect(eyeWords(palette, [])).toEqual(says))

	test('red berries are lost in boxwood, said once for all the pots', () => {
		const pot = { lines: [line(redBerries), line(winter.boxwood)], behind: standing('#ffffff') }
		const [said, ...more] = eyeWords([], [pot, pot])
		expect(more).toEqual([])
		expect(said).toBe('Eyes without red or green cones lose red berries in the boxwood.')
	})

	test('a red stem is lost against a moss wall; what most people lose as well is not said again', () => {
		const of = (wall: string) => eyeWords([], [{ lines: [line(winter.dogwood)], behind: standing(wall) }])
		expect(of('#4b6b3e')).toEqual([expect.stringContaining('red dogwood')])
		expect(of('#8f2c2f')).toEqual([])
	})
})

test('each strip has the colours of the palette in their order, as those eyes see them', () => {
	fc.assert(
		fc.property(fc.array(hexes, { maxLength: 6 }), (palette) => {
			const strips = stripsOf(palette.map((of) => ({ name: '', hex: of })))
			expect(strips.map(({ of }) => of)).toEqual(deficiencies)
			for (const { of, hexes: seen } of strips) expect(seen).toEqual(palette.map((each) => seenAs(each, of)))
		}),
	)
})

test('the order in which the colours stand does not change how much is said', () => {
	fc.assert(
		fc.property(fc.array(hexes, { maxLength: 5 }), (palette) => {
			const count = (of: typeof palette) =>
				eyeWords(
					of.map((each) => ({ name: each, hex: each })),
					[],
				).length
			expect(count(palette.toReversed())).toBe(count(palette))
		}),
	)
})
