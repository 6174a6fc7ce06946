import { describe, expect, test } from 'vitest'
import { changeParts, namedNotes } from '@/lib/proposal/offer/parts'
import { containerId, offerOf } from '../sample'

const offer = offerOf()

describe('parts that a change can be asked for', () => {
	test('the whole, each container, each palette, each extra', () => {
		expect(changeParts(offer)).toEqual([
			{ key: 'whole', name: 'The whole design' },
			{ key: `container ${containerId(1)}`, name: 'Left urn' },
			{ key: `container ${containerId(2)}`, name: 'Right urn' },
			{ key: `container ${containerId(3)}`, name: 'Long box' },
			{ key: 'option a', name: 'Palette “Copper and plum”' },
			{ key: 'option b', name: 'Palette “Brass and navy”' },
			{ key: 'extra wreath', name: 'Extra “Wreath”' },
			{ key: 'extra lights', name: 'Extra “String of lights”' },
		])
	})

	test('each by a key of its own that fits its form', () => {
		const keys = changeParts(offer).map(({ key }) => key)
		expect(new Set(keys).size).toBe(keys.length)
		for (const key of keys) expect(key.length).toBeLessThanOrEqual(80)
	})
})

describe('notes', () => {
	test('are kept by the name of what they are about', () => {
		const notes = [
			{ part: `container ${containerId(2)}`, words: 'lower, please' },
			{ part: 'whole', words: 'less red' },
		]
		expect(namedNotes(offer, notes)).toEqual([
			{ about: 'Right urn', words: 'lower, please' },
			{ about: 'The whole design', words: 'less red' },
		])
	})

	test.each(['option c', `container ${containerId(9)}`, 'extra', '', 'Left urn', 'constructor'])(
		'about “%s”, which is not offered, are refused whole',
		(part) => {
			expect(
				namedNotes(offer, [
					{ part: 'whole', words: 'a' },
					{ part, words: 'b' },
				]),
			).toBeUndefined()
		},
	)
})
