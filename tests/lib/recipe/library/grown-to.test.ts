import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { grow } from '@/lib/recipe/grow/grow'
import { countsInWords } from '@/lib/recipe/library/counts-in-words'
import { grownTo, plannedIn } from '@/lib/recipe/library/grown-to'
import { potNames, pots, potWords } from '@/lib/recipe/library/pots'
import { problemOf } from '../../container/problem-of'
import { accent, branch, by, fixing, green, line, plant, trailing } from '../sample'

const birch = branch(1, 'white birch', { lengthCm: 120 })
const fir = green(2, 'noble fir')
const pine = green(3, 'white pine', { unit: 'kg', piecesPerUnit: 22 })
const cedar = trailing(4, 'cedar')
const globes = accent(5, 'brass globes')
const kale = plant(6, 'kale', { lengthCm: 30 })
const stakes = fixing(7, 'stakes')
const materials = by([birch, fir, pine, cedar, globes, kale, stakes])
const winter = [
	line(birch, { way: 'stems', count: 12 }),
	line(fir, { way: 'greens', count: 14 }),
	line(pine, { way: 'greens', count: 0.5 }),
	line(cedar, { way: 'rim', count: 9 }),
	line(globes, { way: 'faces', count: 3 }),
	line(stakes, { way: 'held', count: 0.25, holds: birch.id }),
]
const [reference, wall, square, box, bowl] = grownTo(winter, materials)

describe('the pots that a recipe is looked at in', () => {
	test.each(potNames)('%s makes sense', (name) => {
		expect(problemOf(pots[name])).toEqual([])
	})

	test('are named in the studio’s unit', () => {
		expect(potNames.map((name) => potWords(name, 'in'))).toEqual([
			'18 in round, all round',
			'16 in round, by a wall',
			'24 in square, all round',
			'36 in × 8 in box, by a wall',
			'20 in low bowl, all round',
		])
		expect(potWords('box', 'cm')).toBe('91.4 cm × 20.3 cm box, by a wall')
	})
})

describe('a recipe grown to them', () => {
	test('is itself in the reference: three faces of three globes', () => {
		expect(reference?.counts).toEqual([12, 14, 0.5, 9, 9, 3])
	})

	test('has fewer by a wall, more in a large square, and follows the length of a box', () => {
		for (const [at, most] of [12, 14, 0.5, 9, 9].entries()) {
			expect(wall?.counts[at]).toBeLessThan(most)
			expect(square?.counts[at]).toBeGreaterThan(most)
		}
		// 12 stems × inner length (91.44 − 2 × 2 cm) ÷ 40 cm
		expect(box?.counts[0]).toBe(26)
	})

	test('stands as tall as its stems may in each pot, and is not known where no stem has a length', () => {
		const tallest = [reference, wall, square, box, bowl].map((each) => each?.tallestCm ?? 0)
		expect(tallest.every((cm) => cm > 0 && cm < 120)).toBe(true)
		expect(square?.tallestCm).toBeGreaterThan(wall?.tallestCm ?? Number.POSITIVE_INFINITY)
		expect(reference?.tallestCm).toBeGreaterThan(box?.tallestCm ?? Number.POSITIVE_INFINITY)
		expect(grownTo([line(kale, { way: 'spacing', share: 1 })], materials)[0]?.tallestCm).toBeNull()
	})

	test('law: counts are those that growing gives, line by line, whatever the recipe', () => {
		const some = fc.subarray(winter, { minLength: 1 })
		fc.assert(
			fc.property(some, (lines) => {
				for (const { pot, counts } of grownTo(lines, materials))
					expect(counts).toEqual(grow(lines, pots[pot], materials).map(({ count }) => count))
			}),
		)
	})
})

test('counts in words: pieces by their number, the rest by how they are counted', () => {
	expect(countsInWords(plannedIn('reference', winter, materials))).toBe(
		'white birch 12 stems, noble fir 14 stems, white pine 0.5 kg, cedar 9 stems, brass globes 9, stakes 3',
	)
})
