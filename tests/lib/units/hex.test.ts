import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { hex, isHex } from '@/lib/units/hex'

describe('a colour', () => {
	test.each([
		{ name: 'slate blue', text: '#5f7488', is: '#5f7488' },
		{ name: 'written large', text: '#C0FFEE', is: '#c0ffee' },
		{ name: 'black', text: '#000000', is: '#000000' },
	])('$name: $text', ({ text, is }) => {
		expect(hex(text)).toBe(is)
	})

	test.each([
		{ name: 'a name', text: 'copper' },
		{ name: 'three digits', text: '#b53' },
		{ name: 'eight digits', text: '#b5653a80' },
		{ name: 'without its mark', text: 'b5653a' },
		{ name: 'not hexadecimal', text: '#b5653g' },
		{ name: 'a line end after it', text: '#b5653b\n' },
		{ name: 'a space before it', text: ' #b5653c' },
		{ name: 'letters of full width', text: '#ｂ5653d' },
		{ name: 'a way out of a style', text: '#b5653e;}' },
		{ name: 'nothing', text: '' },
	])('refuses $name', ({ text }) => {
		expect(isHex(text)).toBe(false)
		expect(() => hex(text)).toThrow('is not a colour such as #5f7488')
	})

	test('says at most twenty characters of what came', () => {
		expect(() => hex('x'.repeat(500))).toThrow(`hex: "${'x'.repeat(20)}" is not a colour`)
	})

	test('keeps its sixteen million values', () => {
		fc.assert(
			fc.property(fc.integer({ min: 0, max: 0xffffff }), (value) => {
				const text = `#${value.toString(16).padStart(6, '0')}`
				expect(hex(text.toUpperCase())).toBe(text)
				expect(Number.parseInt(hex(text).slice(1), 16)).toBe(value)
			}),
		)
	})
})
