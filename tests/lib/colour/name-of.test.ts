import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { familyOf, nameOf, nounOf, oklchOf } from '@/lib/colour/name-of'
import { families } from '@/lib/colour/names'
import { hex } from '@/lib/units/hex'
import { hexes } from './arbitrary'

describe('a colour in plain words', () => {
	test.each([
		{ of: '#3d6147', seen: 'noble fir', name: 'deep green', family: 'green' },
		{ of: '#88837a', seen: 'fieldstone', name: 'warm grey', family: 'grey' },
		{ of: '#4b5157', seen: 'an anchor', name: 'dark cool grey', family: 'grey' },
		{ of: '#b08d4f', seen: 'a door handle', name: 'brass', family: 'yellow' },
		{ of: '#b5653a', seen: 'baking pans', name: 'copper', family: 'orange' },
		{ of: '#6d3049', seen: 'an awning', name: 'plum', family: 'purple' },
		{ of: '#20344f', seen: 'a bank’s doors', name: 'navy', family: 'blue' },
		{ of: '#5f7488', seen: 'clapboard', name: 'slate', family: 'blue' },
		{ of: '#d8d0c1', seen: 'birch bark', name: 'bone', family: 'white' },
		{ of: '#dbe6ea', seen: 'frosted glass', name: 'frost', family: 'white' },
		{ of: '#6c7443', seen: 'moss', name: 'olive', family: 'green' },
		{ of: '#8a9a78', seen: 'sage', name: 'sage', family: 'green' },
		{ of: '#b02430', seen: 'winterberry', name: 'red', family: 'red' },
		{ of: '#7a2f3a', seen: 'a door', name: 'wine', family: 'red' },
		{ of: '#b3596b', seen: 'a velvet bow', name: 'rose', family: 'pink' },
		{ of: '#6d5640', seen: 'pine cones', name: 'soft brown', family: 'brown' },
		{ of: '#2f3030', seen: 'iron', name: 'charcoal', family: 'black' },
		{ of: '#ffffff', seen: 'white', name: 'white', family: 'white' },
		{ of: '#000000', seen: 'black', name: 'black', family: 'black' },
		{ of: '#808080', seen: 'a grey card', name: 'grey', family: 'grey' },
		{ of: '#c0392b', seen: 'a post box', name: 'red', family: 'red' },
		{ of: '#1e6f73', seen: 'a shutter', name: 'teal', family: 'teal' },
	])('$seen, $of, is $name', ({ of, name, family }) => {
		expect(nameOf(hex(of))).toBe(name)
		expect(familyOf(hex(of))).toBe(family)
	})

	test('every colour has a name of one to three plain words, its noun the last of them, and a family', () => {
		fc.assert(
			fc.property(hexes, (of) => {
				expect(nameOf(of)).toMatch(/^[a-z]+( [a-z]+){0,2}$/)
				expect(nameOf(of).endsWith(nounOf(of))).toBe(true)
				expect(families).toContain(familyOf(of))
			}),
			{ numRuns: 5000 },
		)
	})

	test('no grey is named by a hue, at any lightness', () => {
		for (let level = 0; level < 256; level++) {
			const grey = hex(`#${level.toString(16).padStart(2, '0').repeat(3)}`)
			expect(nameOf(grey)).toMatch(/^(black|charcoal|(dark |pale )?grey|white)$/)
			expect(oklchOf(grey).h).toBe(0)
		}
	})
})
