import { describe, expect, test } from 'vitest'
import { capital, list, numberWord, percent, quantity } from '@/lib/format/words'

describe('numbers at the head of a sentence', () => {
	test.each([
		{ count: 0, says: 'No' },
		{ count: 1, says: 'One' },
		{ count: 7, says: 'Seven' },
		{ count: 12, says: 'Twelve' },
		{ count: 13, says: '13' },
		{ count: 240, says: '240' },
	])('$count: $says', ({ count, says }) => {
		expect(numberWord(count)).toBe(says)
	})
})

describe('a list', () => {
	test.each([
		{ name: 'nothing', items: [], says: '' },
		{ name: 'one', items: ['birch'], says: 'birch' },
		{ name: 'two', items: ['birch', 'fir'], says: 'birch and fir' },
		{ name: 'three', items: ['birch', 'fir', 'cedar'], says: 'birch, fir and cedar' },
		{ name: 'four', items: ['ivy', 'moss', 'fern', 'yew'], says: 'ivy, moss, fern and yew' },
	])('of $name', ({ items, says }) => {
		expect(list(items)).toBe(says)
	})

	test('to choose from', () => {
		expect(list(['rust', 'bone', 'plum'], 'or')).toBe('rust, bone or plum')
	})
})

test.each([
	{ text: 'noble fir', is: 'Noble fir' },
	{ text: 'épinette', is: 'Épinette' },
	{ text: '12 stems', is: '12 stems' },
	{ text: '', is: '' },
])('“$text” at the head of a sentence', ({ text, is }) => {
	expect(capital(text)).toBe(is)
})

describe('a quantity', () => {
	test.each([
		{ count: 1, unit: 'stem', says: '1 stem' },
		{ count: 5, unit: 'stem', says: '5 stems' },
		{ count: 0, unit: 'piece', says: '0 pieces' },
		{ count: 1, unit: 'kg', says: '1 kg' },
		{ count: 2.5, unit: 'kg', says: '2.5 kg' },
		{ count: 0.75, unit: 'litre', says: '0.75 litres' },
		{ count: 3, unit: 'string', says: '3 strings' },
	])('$says', ({ count, unit, says }) => {
		expect(quantity(count, unit)).toBe(says)
	})
})

test.each([
	{ value: 52.3, says: '52.3 %' },
	{ value: 0, says: '0 %' },
	{ value: -13, says: '−13 %' },
])('$says', ({ value, says }) => {
	expect(percent(value)).toBe(says)
})
