import { describe, expect, test } from 'vitest'
import { csv } from '@/lib/money/statement/csv'
import { records } from '../../lib/money/statement/records'

// RFC 4180 (Y. Shafranovich, October 2005), section 2: the examples of its rules, each record ended by CRLF.
// Rule 5 lets a field be quoted or not; here only those are that have to be, so its example is written without quotes.
const examples = [
	{
		rule: '1: each record on a line of its own',
		rows: [
			['aaa', 'bbb', 'ccc'],
			['zzz', 'yyy', 'xxx'],
		],
		text: 'aaa,bbb,ccc\r\nzzz,yyy,xxx\r\n',
	},
	{
		rule: '3: a header line of the same format',
		rows: [
			['field_name', 'field_name', 'field_name'],
			['aaa', 'bbb', 'ccc'],
			['zzz', 'yyy', 'xxx'],
		],
		text: 'field_name,field_name,field_name\r\naaa,bbb,ccc\r\nzzz,yyy,xxx\r\n',
	},
	{
		rule: '6: a field with a line break is quoted',
		rows: [
			['aaa', 'b\r\nbb', 'ccc'],
			['zzz', 'yyy', 'xxx'],
		],
		text: 'aaa,"b\r\nbb",ccc\r\nzzz,yyy,xxx\r\n',
	},
	{ rule: '7: a quote in a quoted field is doubled', rows: [['aaa', 'b"bb', 'ccc']], text: 'aaa,"b""bb",ccc\r\n' },
]

describe('RFC 4180, section 2', () => {
	test.each(examples)('rule $rule', ({ rows: [header = [], ...rows], text }) => {
		expect(csv(header, rows)).toBe(text)
	})

	test.each([
		{
			text: '"aaa","bbb","ccc"\r\nzzz,yyy,xxx\r\n',
			read: [
				['aaa', 'bbb', 'ccc'],
				['zzz', 'yyy', 'xxx'],
			],
		},
		{
			text: '"aaa","b\r\nbb","ccc"\r\nzzz,yyy,xxx\r\n',
			read: [
				['aaa', 'b\r\nbb', 'ccc'],
				['zzz', 'yyy', 'xxx'],
			],
		},
		{ text: '"aaa","b""bb","ccc"\r\n', read: [['aaa', 'b"bb', 'ccc']] },
	])('as printed there it reads the same as ours: $text', ({ text, read }) => {
		const [header = [], ...rows] = read
		expect(records(text)).toEqual(read)
		expect(records(csv(header, rows))).toEqual(read)
	})

	test('rule 4: spaces are part of a field', () => {
		expect(csv([' a ', 'b'], [])).toBe(' a ,b\r\n')
	})
})

// OWASP Application Security Verification Standard 5.0.0, requirement 1.2.10: the characters that it names, each to be
// escaped by a single quote where a field begins with it.
test.each(['=', '+', '-', '@', '\t', '\0'])('a field that begins with %j is text', (mark) => {
	expect(csv(['a'], [[`${mark}1`]])).toBe(`a\r\n'${mark}1\r\n`)
})
