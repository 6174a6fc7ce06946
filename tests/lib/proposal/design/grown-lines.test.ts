import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { grownLines, regrown } from '@/lib/proposal/design/grown-lines'
import type { DraftLine } from '@/lib/proposal/draft'
import type { RecipeLine } from '@/lib/recipe/recipe'
import { card, facts, materialId, typed } from '../sample'

const line = (n: number, role: RecipeLine['role'], grows: RecipeLine['grows']): RecipeLine => ({
	material: materialId(n),
	role,
	holding: 'sold',
	grows,
})
const recipe = [
	line(1, 'thriller', { way: 'stems', count: 12 }),
	line(4, 'filler', { way: 'greens', count: 20 }),
	line(3, 'accent', { way: 'faces', count: 1 }),
	line(6, 'mechanics', { way: 'held', count: 1, holds: materialId(3) }),
]
const large = card(1, 'Large', { topCm: 60.96, bottomCm: 45.72, heightCm: 60.96 })
const small = card(2, 'Small', { topCm: 30.48, bottomCm: 22.86, heightCm: 30.48 })
const counts = (lines: readonly DraftLine[]) => lines.map(({ count }) => count.value)

describe('a recipe put into a pot', () => {
	test('is grown to it, and remembers how', () => {
		const lines = grownLines(recipe, [], large, facts.materials)
		expect(lines.map(({ count }) => count.way)).toEqual(['grown', 'grown', 'grown', 'grown'])
		expect(
			counts(lines).every(
				(count, index) => count >= (counts(grownLines(recipe, [], small, facts.materials))[index] ?? 0),
			),
		).toBe(true)
		expect(counts(lines)[0]).toBeGreaterThan(12)
	})

	test('leaves what was typed by hand, and what is kept', () => {
		const before = grownLines(recipe, [], small, facts.materials)
		const [first] = before
		if (first?.count.way !== 'grown') throw new Error('The first line is not grown.')
		const kept: DraftLine = { ...first, count: { ...first.count, value: 7, isKept: true } }
		const hand = typed(5, 'accent', 2)
		const lines = grownLines(recipe, [kept, hand, ...before.slice(1)], large, facts.materials)
		const of = (n: number) => lines.find(({ material }) => material === materialId(n))?.count.value
		expect([of(1), of(5), lines.length]).toEqual([7, 2, 5])
		expect(of(4)).toBeGreaterThan(0)
	})

	test('grown anew to where it stands changes nothing', () => {
		const lines = grownLines(recipe, [], large, facts.materials)
		expect(regrown(lines, large, facts.materials)).toEqual(lines)
	})

	test('what holds follows what is held when that is kept', () => {
		const lines = grownLines(recipe, [], large, facts.materials).map(
			(each): DraftLine =>
				each.material === materialId(3) && each.count.way === 'grown'
					? { ...each, count: { ...each.count, value: 9, isKept: true } }
					: each,
		)
		expect(regrown(lines, large, facts.materials).at(-1)?.count.value).toBe(9)
	})

	test('there and back again are the first counts', () => {
		fc.assert(
			fc.property(fc.integer({ min: 25, max: 90 }), (acrossCm) => {
				const other = card(3, 'Other', { topCm: acrossCm, bottomCm: acrossCm - 8, heightCm: 50 })
				const lines = grownLines(recipe, [], large, facts.materials)
				expect(regrown(regrown(lines, other, facts.materials), large, facts.materials)).toEqual(lines)
			}),
		)
	})
})
