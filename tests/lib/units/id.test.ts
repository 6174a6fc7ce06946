import fc from 'fast-check'
import { v1, v3, v4, v5, v6, v7 } from 'uuid'
import { describe, expect, test } from 'vitest'
import { id, isId } from '@/lib/units/id'

const at = '0190e6b2-7c41-7d10-9a55-3f2b6c8d9e01'

describe('an id', () => {
	test('is taken as it is written', () => {
		expect(id<'client'>(at)).toBe(at)
	})

	// RFC 9562, section 4: versions 1 to 8, the variant 10xx.
	test.each([
		{ name: 'written large', text: at.toUpperCase() },
		{ name: 'without hyphens', text: at.replaceAll('-', '') },
		{ name: 'in braces', text: `{${at}}` },
		{ name: 'as a URN', text: `urn:uuid:${at}` },
		{ name: 'a version of nothing', text: '0190e6b2-7c41-0d10-9a55-3f2b6c8d9e02' },
		{ name: 'version nine', text: '0190e6b2-7c41-9d10-9a55-3f2b6c8d9e03' },
		{ name: 'another variant', text: '0190e6b2-7c41-7d10-ca55-3f2b6c8d9e04' },
		{ name: 'a digit short', text: at.slice(0, -1) },
		{ name: 'a line end after it', text: `${at}\n` },
		{ name: 'two at once', text: `${at}${at}` },
		{ name: 'a way up the folders', text: '../../0190e6b2-7c41-7d10' },
		{ name: 'a way out of a query', text: `${at}' or '1'='1` },
		{ name: 'nothing', text: '' },
	])('is not $name', ({ text }) => {
		expect(isId(text)).toBe(false)
		expect(() => id(text)).toThrow('is not a UUID')
	})

	test('says at most sixty characters of what came', () => {
		expect(() => id('z'.repeat(900))).toThrow(`id: "${'z'.repeat(60)}" is not a UUID`)
	})

	test('may be of any version that the uuid library makes', () => {
		const name = fc.string({ maxLength: 12 })
		fc.assert(
			fc.property(name, (of) => {
				for (const made of [v1(), v3(of, at), v4(), v5(of, at), v6(), v7()]) expect(isId(made)).toBe(true)
			}),
			{ numRuns: 30 },
		)
	})
})
