import { describe, expect, test } from 'vitest'
import { canBeLent, hazards, holdings, kindSchema, kinds, pieces, roles, units } from '@/lib/recipe/material'

describe('a material', () => {
	test.each([
		{ kind: 'fresh', lent: false },
		{ kind: 'live', lent: false },
		{ kind: 'mechanics', lent: false },
		{ kind: 'faux', lent: true },
		{ kind: 'ornament', lent: true },
		{ kind: 'light', lent: true },
	] as const)('$kind: can be lent, $lent', ({ kind, lent }) => {
		expect(canBeLent(kind)).toBe(lent)
		expect(kindSchema.parse(kind)).toBe(kind)
	})

	test('the words of the trade, each once', () => {
		expect(kinds).toHaveLength(6)
		expect(roles).toEqual(['thriller', 'filler', 'spiller', 'accent', 'mechanics'])
		expect(holdings).toEqual(['sold', 'lent', 'own'])
		for (const words of [kinds, pieces, roles, units, holdings, hazards]) expect(new Set(words).size).toBe(words.length)
	})

	test('a kind that nobody knows is refused', () => {
		expect(() => kindSchema.parse('plastic')).toThrow('Invalid option')
	})
})
