import { colorsNamed } from 'culori'
import { describe, expect, test } from 'vitest'
import { familyOf } from '@/lib/colour/name-of'
import type { Family } from '@/lib/colour/names'
import { hexOf } from '@/lib/colour/rgb'

// CSS Color Module Level 4, named colours: those whose name ends in a word of everyday ("darkolivegreen", "lightskyblue").
// Ours must be of that family, except where the CSS colour itself strays from the word, each with the reason.
const words: Readonly<Record<string, Family>> = {
	white: 'white',
	gray: 'grey',
	grey: 'grey',
	black: 'black',
	brown: 'brown',
	red: 'red',
	orange: 'orange',
	yellow: 'yellow',
	green: 'green',
	blue: 'blue',
	violet: 'purple',
	purple: 'purple',
	orchid: 'purple',
	pink: 'pink',
	teal: 'teal',
	turquoise: 'teal',
	gold: 'yellow',
	tan: 'brown',
}
const strays: Readonly<Record<string, Family>> = {
	aliceblue: 'white', // nearly white
	brown: 'red', // hue 26°: a dark red
	rosybrown: 'pink', // hue 19°, greyed
	sandybrown: 'orange', // light and strong
	orangered: 'orange', // hue 35°
	mediumvioletred: 'pink', // hue 350°, strong
	palevioletred: 'pink', // hue 1°, light
	cadetblue: 'teal', // hue 198°
	lightseagreen: 'teal', // hue 189°
	greenyellow: 'green', // hue 130°
	navajowhite: 'yellow', // chroma 0.07
	darkslategray: 'teal', // chroma 0.04 at hue 196°
	darkslategrey: 'teal',
	slategray: 'blue', // chroma 0.03 at hue 248°, as slate is
	slategrey: 'blue',
	lightslategray: 'blue',
	lightslategrey: 'blue',
}

const named = Object.entries(colorsNamed).flatMap(([name, value]) => {
	const word = Object.keys(words).find((each) => name.endsWith(each))
	const of = hexOf({ r: (value >> 16) / 255, g: ((value >> 8) & 255) / 255, b: (value & 255) / 255 })
	return word === undefined ? [] : [{ name, of, word, family: strays[name] ?? words[word] }]
})

describe('the named colours of CSS', () => {
	test('that end in a word of everyday are 90, and 17 of them stray from it', () => {
		expect(named).toHaveLength(90)
		expect(Object.keys(strays)).toHaveLength(17)
		for (const [name, family] of Object.entries(strays))
			expect(words[named.find((each) => each.name === name)?.word ?? '']).not.toBe(family)
	})

	test.each(named)('$name, $of, is of the family $family', ({ of, family }) => {
		expect(familyOf(of)).toBe(family)
	})
})
