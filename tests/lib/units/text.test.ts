import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { isClean, normal } from '@/lib/units/text'
import { anyText } from './arbitrary'

const at = (code: number) => String.fromCodePoint(code)

describe('clean text', () => {
	test.each([
		{ name: 'plain words', text: 'Two urns at the step' },
		{ name: 'accents and quotes', text: 'Café “Lumière” – naïve' },
		{ name: 'Greek, Cyrillic, Hebrew, Arabic', text: 'Ελιά, клён, גפן, نخلة' },
		{ name: 'a tree beyond the first plane', text: 'A 🌲 by the door' },
		{ name: 'a tab and line ends', text: 'one\ttwo\r\nthree\nfour' },
		{ name: 'a mark of direction that turns nothing about', text: `${at(0x200f)}שלום${at(0x200e)}` },
		{ name: 'a joined family', text: `👩${at(0x200d)}👧` },
		{ name: 'nothing', text: '' },
	])('is $name', ({ text }) => {
		expect(isClean(text)).toBe(true)
	})

	test.each([
		{ name: 'a NUL', code: 0x00 },
		{ name: 'a bell', code: 0x07 },
		{ name: 'a backspace', code: 0x08 },
		{ name: 'a vertical tab', code: 0x0b },
		{ name: 'a form feed', code: 0x0c },
		{ name: 'an escape', code: 0x1b },
		{ name: 'a delete', code: 0x7f },
		{ name: 'a next line', code: 0x85 },
		{ name: 'a control sequence introducer', code: 0x9b },
		{ name: 'a right-to-left embedding', code: 0x202b },
		{ name: 'a right-to-left override', code: 0x202e },
		{ name: 'a first-strong isolate', code: 0x2068 },
		{ name: 'the first half of a pair alone', code: 0xd83c },
		{ name: 'the second half of a pair alone', code: 0xdf32 },
	])('holds no $name', ({ code }) => {
		expect(isClean(`before${at(code)}after`)).toBe(false)
		expect(isClean(at(code))).toBe(false)
	})

	// Unicode Character Database: general category Cc, less tab, line feed and carriage return; and the explicit
	// embeddings, overrides and isolates of Unicode Standard Annex 9, section 2.
	test('is free of every control character and of every mark that turns the order about, and of nothing else', () => {
		const allowed = new Set(['\t', '\n', '\r'])
		for (let code = 0; code <= 0xffff; code += 1) {
			const text = at(code)
			const isControl = /\p{Cc}/u.test(text) && !allowed.has(text)
			const isTurning = (code >= 0x202a && code <= 0x202e) || (code >= 0x2066 && code <= 0x2069)
			const isHalf = code >= 0xd800 && code <= 0xdfff
			if (isClean(text) === (isControl || isTurning || isHalf)) expect.fail(`U+${code.toString(16)}`)
		}
	})
})

describe('text as it is kept', () => {
	test.each([
		{ name: 'a letter and its accent become one', text: 'cafe\u0301', is: 'café' },
		{ name: 'an ångström is a letter', text: '\u212b', is: 'Å' },
		{ name: 'a Hangul syllable', text: '\u1100\u1161', is: '가' },
		{ name: 'accents in their order', text: 'q\u0307\u0323', is: 'q\u0323\u0307' },
		{ name: 'what composes no more', text: '\u0958', is: '\u0915\u093c' },
		{ name: 'line ends of three kinds', text: 'a\r\nb\rc\n', is: 'a\nb\nc\n' },
		{ name: 'the line and paragraph separators', text: 'd\u2028e\u2029f', is: 'd\ne\nf' },
		{ name: 'a figure of full width stays', text: '３ urns', is: '３ urns' },
	])('$name', ({ text, is }) => {
		expect(normal(text)).toBe(is)
	})

	test('is kept the same a second time, has no carriage return, and stays clean', () => {
		fc.assert(
			fc.property(anyText(40), (text) => {
				const once = normal(text)
				expect(normal(once)).toBe(once)
				expect(once.includes('\r')).toBe(false)
				expect(isClean(once)).toBe(isClean(text))
			}),
			{ numRuns: 1000 },
		)
	})
})
