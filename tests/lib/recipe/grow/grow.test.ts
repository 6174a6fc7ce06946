import { describe, expect, test } from 'vitest'
import { grow } from '@/lib/recipe/grow/grow'
import { reference } from '@/lib/recipe/grow/reference'
import type { Grows } from '@/lib/recipe/recipe'
import type { DesignMaterial } from '@/lib/recipe/traits'
import { branch, by, fixing, green, lights, line, materialId, trailing } from '../sample'
import { pot } from './pots'

const [noble, silver, box] = [green(1, 'noble fir'), green(2, 'silver fir'), green(3, 'boxwood')]
const [dogwood, stakes, ties, warm] = [
	branch(4, 'red dogwood'),
	fixing(5, 'stakes'),
	fixing(6, 'ties'),
	lights(7, 'lights'),
]
const all = [noble, silver, box, dogwood, stakes, ties, warm]

type Row = readonly [DesignMaterial, Grows]
const counts = (rows: readonly Row[], at = reference) =>
	grow(
		rows.map(([material, grows]) => line(material, grows)),
		at,
		by(all),
	).map(({ count }) => count)

const greens = (count: number): Grows => ({ way: 'greens', count })
const half = pot([12, null, 12]) // inside 28.48 cm: 0.4243 of the reference
const square = pot([24, 24, 24])

describe('greens of a role', () => {
	test('their total is rounded once, and split by largest remainder', () => {
		// 20 × 2.3156 is 46.31: 46 over 9 : 6 : 5 are 20.7, 13.8 and 11.5
		const rows: Row[] = [
			[noble, greens(9)],
			[silver, greens(6)],
			[box, greens(5)],
		]
		expect(counts(rows, square)).toEqual([21, 14, 11])
	})

	test('each is there at least once', () => {
		// 15 × 0.4243 is 6.36: 6 over 13 : 1 : 1 would be 5.2, 0.4 and 0.4
		const rows: Row[] = [
			[noble, greens(13)],
			[silver, greens(1)],
			[box, greens(1)],
		]
		expect(counts(rows, half)).toEqual([4, 1, 1])
	})

	test('what is bought by weight has its own', () => {
		const pine = green(8, 'white pine', { unit: 'kg' })
		const rows = [line(pine, greens(0.6)), line(noble, greens(7)), line(silver, greens(4))]
		const grown = grow(rows, square, by([...all, pine]))
		// 11 × 2.3156 is 25.47: 25 over 7 : 4
		expect(grown.map(({ count }) => count)).toEqual([1.389, 16, 9])
	})

	test('another role has its own total', () => {
		const cedar = { ...trailing(9, 'cedar'), role: 'spiller' as const }
		const rows = [line(noble, greens(5)), line(cedar, greens(6))]
		// 11.58 and 13.89
		expect(grow(rows, square, by([noble, cedar])).map(({ count }) => count)).toEqual([12, 14])
	})
})

describe('what is held', () => {
	const held = (count: number, of: DesignMaterial | null): Grows => ({ way: 'held', count, holds: of?.id ?? null })

	test('follows the stems, and what holds it follows it', () => {
		const rows: Row[] = [
			[ties, held(2, stakes)],
			[dogwood, { way: 'stems', count: 12 }],
			[stakes, held(0.25, dogwood)],
		]
		// 22.5 stems are 23, ¼ of them 5.75
		expect(counts(rows, square)).toEqual([12, 23, 6])
	})

	test('follows the opening where it holds nothing', () => {
		expect(counts([[warm, held(2, null)]], square)).toEqual([5])
	})

	test('is nothing where there is nothing to hold', () => {
		expect(counts([[stakes, held(3, dogwood)]])).toEqual([0])
	})

	test('two that hold each other hold nothing', () => {
		expect(
			counts([
				[stakes, held(1, ties)],
				[ties, held(1, stakes)],
				[warm, held(1, null)],
			]),
		).toEqual([0, 0, 1])
	})
})

describe('a count that the designer has fixed', () => {
	test('stays, what is held by it follows, and the other greens share what is theirs', () => {
		const rows = [
			{ ...line(dogwood, { way: 'stems', count: 12 }), kept: 40 },
			line(stakes, { way: 'held', count: 0.25, holds: dogwood.id }),
			{ ...line(noble, greens(9)), kept: 30 },
			line(silver, greens(6)),
			line(box, greens(5)),
		]
		// 11 × 2.3156 is 25.47: 25 over 6 : 5 are 13.64 and 11.36
		expect(grow(rows, square, by(all)).map(({ count }) => count)).toEqual([40, 10, 30, 14, 11])
	})
})

describe('nothing is lost', () => {
	test('a recipe with no lines grows to none', () => {
		expect(grow([], square, by(all))).toEqual([])
	})

	test('a line whose material is not known is grown whole, and keeps what it said', () => {
		const lost = { ...line(noble, greens(9)), material: materialId(99) }
		expect(grow([lost], square, by(all))).toEqual([{ ...lost, count: 21 }])
	})
})
