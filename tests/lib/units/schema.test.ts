import { describe, expect, test } from 'vitest'
import { centsSchema, daySchema, hexSchema, idSchema } from '@/lib/units/schema'

const at = '0190e6b2-7c41-7d10-9a55-3f2b6c8d9e05'
const proposal = idSchema<'proposal'>()

describe('JSON to what the core knows', () => {
	test('a day, a colour, an amount and an id come through as they are', () => {
		expect(daySchema.parse('2028-02-29')).toBe('2028-02-29')
		expect(hexSchema.parse('#24365a')).toBe('#24365a')
		expect(centsSchema.parse(-1250)).toBe(-1250)
		expect(proposal.parse(at)).toBe(at)
	})

	test.each([
		{ name: 'a day that is none', schema: daySchema, value: '2026-02-29', says: 'is not a date of the calendar' },
		{
			name: 'a moment for a day',
			schema: daySchema,
			value: '2026-02-27T08:00:00Z',
			says: 'is not a date of the calendar',
		},
		{ name: 'a colour written large', schema: hexSchema, value: '#24365B', says: 'is not a colour such as #5f7488' },
		{ name: 'half a cent', schema: centsSchema, value: 12.5, says: 'expected int' },
		{ name: 'an amount as text', schema: centsSchema, value: '1250', says: 'expected number' },
		{ name: 'an amount past counting', schema: centsSchema, value: 2 ** 53, says: 'Too big' },
		{ name: 'an amount of no number', schema: centsSchema, value: Number.NaN, says: 'expected number' },
		{ name: 'an id written large', schema: proposal, value: at.toUpperCase(), says: 'is not an id' },
		{ name: 'a number for an id', schema: proposal, value: 7, says: 'expected string' },
	])('$name is refused', ({ schema, value, says }) => {
		expect(() => schema.parse(value)).toThrow(says)
	})
})
