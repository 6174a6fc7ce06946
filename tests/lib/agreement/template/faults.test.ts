import { describe, expect, test } from 'vitest'
import { faults } from '@/lib/agreement/template/faults'
import type { Clause } from '@/lib/agreement/template/template'

const first: Clause = { key: 'first', title: 'First', text: 'For {client}.', isOn: true, order: 1 }
const second: Clause = { key: 'second', title: 'Second', text: 'From {start}.', isOn: true, order: 2 }
const found = (...clauses: Clause[]) => faults({ clauses }).map(({ at, says }) => `${at} ${says}`)

test('nothing in a sound template, nor in what is turned off', () => {
	expect(found(first, second)).toEqual([])
	expect(found(first, { ...second, text: '{nonsense', title: '', order: 1, isOn: false })).toEqual([])
})

describe('what is wrong, where', () => {
	test.each<[string, Partial<Clause>, string, RegExp]>([
		[
			'an unknown blank',
			{ text: '{customer} owes {sum}.' },
			'text',
			/“Second”: \{customer\} and \{sum\} are no blanks/,
		],
		['one unknown blank', { text: 'By {Start}.' }, 'text', /\{Start\} is no blank that can be filled.*\{start\}/],
		['an open brace', { text: 'From {start.' }, 'text', /a brace is open or closed alone/],
		['a closed brace', { text: 'From start}.' }, 'text', /a brace is open or closed alone/],
		['braces in braces', { text: '{{start}}' }, 'text', /a brace is open or closed alone/],
		['no text', { text: ' \n ' }, 'text', /“Second” says nothing yet/],
		['no title', { title: ' ' }, 'title', /Give the clause a title/],
		['a title of two lines', { title: 'a\nb' }, 'title', /on one line/],
		['a blank in a title', { title: 'For {client}' }, 'title', /without blanks/],
		['a long title', { title: 'a'.repeat(81) }, 'title', /to 80 characters/],
		['a long text', { text: 'a'.repeat(4001) }, 'text', /to 4000 characters/],
		['a control character', { text: 'a\u0007' }, 'text', /cannot be stored/],
		['a mark that turns the order about', { title: 'a\u202eb' }, 'title', /cannot be stored/],
		['half of a surrogate pair', { text: 'a\ud83c' }, 'text', /cannot be stored/],
		['the place of another', { order: 1 }, 'order', /has the place of another/],
	])('%s', (_, more, field, says) => {
		const all = found(first, { ...second, ...more }).filter((each) => each.startsWith('clauses.second'))
		expect(all).toHaveLength(1)
		expect(all[0]).toMatch(new RegExp(`^clauses\\.second\\.${field} `))
		expect(all[0]).toMatch(says)
	})

	test('one key twice, even where one of them is off', () => {
		expect(found(first, { ...second, key: 'first', isOn: false })).toEqual([
			'clauses.first Two clauses have the key “first”.',
		])
	})

	test('nothing turned on', () => {
		expect(found({ ...first, isOn: false })).toEqual(['clauses Turn at least one clause on.'])
	})
})
