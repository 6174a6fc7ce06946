import { describe, expect, test } from 'vitest'
import { day } from '@/lib/units/day'
import { bookSentence } from '@/lib/visit/book-sentence'
import { isAllIn } from '@/lib/visit/is-all-in'
import { isPhotoSize, photoAddress } from '@/lib/visit/photo'
import { visitWords } from '@/lib/visit/words'

const on = day('2026-12-03')

describe('a visit in words', () => {
	test.each([
		[{ kind: 'install', state: 'done', day: on, came: 'Isolde' }, 'Installed 3 December by Isolde'],
		[{ kind: 'take-down', state: 'done', day: on, came: '' }, 'Taken down 3 December'],
		[{ kind: 'watering', state: 'done', day: on, came: 'Tobin and Perrin' }, 'Watered 3 December by Tobin and Perrin'],
		[{ kind: 'refresh', state: 'planned', day: on, came: 'Tobin' }, 'Refresh planned for Thursday 3 December'],
		[{ kind: 'check', state: 'to plan', day: null, came: '' }, 'Check to plan'],
		[{ kind: 'check', state: 'dropped', day: on, came: '' }, 'Check dropped'],
	] as const)('%j', (visit, words) => {
		expect(visitWords(visit)).toBe(words)
	})
})

describe('how the visits stand', () => {
	test.each([
		[{ toPlan: 0, planned: 0, late: 0 }, 'No visit is open.'],
		[{ toPlan: 1, planned: 0, late: 0 }, 'One visit to plan, none planned.'],
		[{ toPlan: 2, planned: 3, late: 0 }, 'Two visits to plan, three planned.'],
		[{ toPlan: 0, planned: 1, late: 0 }, 'Nothing is to be planned; one visit is planned.'],
		[
			{ toPlan: 14, planned: 4, late: 1 },
			'14 visits to plan, four planned. One of them was to be made by now: write down how it went.',
		],
	])('%j', (counts, says) => {
		expect(bookSentence(counts)).toBe(says)
	})
})

describe('a design is in', () => {
	test.each([
		[['a', 'b'], ['a'], false],
		[['a', 'b'], ['b', 'a'], true],
		[['a', 'b'], [null], true],
		[['a'], ['b'], false],
		[[], [], false],
	] as const)('places %j, installs at %j: %s', (places, installed, isIn) => {
		expect(isAllIn(places, installed)).toBe(isIn)
	})
})

test('a photo has two addresses, and no third', () => {
	expect([photoAddress('p', 'large'), photoAddress('p', 'small')]).toEqual(['/photo/p/large.jpg', '/photo/p/small.jpg'])
	expect(['large', 'small', 'constructor', ''].map(isPhotoSize)).toEqual([true, true, false, false])
})
