import { expect, test } from 'vitest'
import { fieldAt, placeEntries, placeKeysIn } from '@/lib/forms/answer/place-keys'
import { choiceQuery } from '@/lib/forms/read'
import { placeId } from '../pricing/sample'

const [front, side] = [placeId(1), placeId(2)]

test('what single places take, out of an address', () => {
	const query = { option: 'a', [fieldAt(side)]: 'b', [fieldAt(front)]: ['c', 'a'], without: [side] }
	expect(placeKeysIn(query)).toEqual({ [side]: 'b', [front]: 'c' })
})

test.each([`at.`, 'at.Boathouse', `at.${placeId(1)}x`, `AT.${placeId(1)}`, placeId(1), 'at.__proto__'])(
	'“%s” names no place',
	(name) => {
		expect(placeKeysIn({ [name]: 'a' })).toEqual({})
	},
)

test('a place that is named without a palette takes none', () => {
	expect(placeKeysIn({ [fieldAt(side)]: undefined, [fieldAt(front)]: [] })).toEqual({})
})

test('into an address and back it is the same', () => {
	const places = { [front]: 'a', [side]: 'b' }
	expect(placeKeysIn(Object.fromEntries(choiceQuery({ place: placeEntries(places) })))).toEqual(places)
})
