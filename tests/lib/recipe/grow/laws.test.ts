import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { viewedFaces } from '@/lib/container/along'
import { grow } from '@/lib/recipe/grow/grow'
import { openingRatio, reference } from '@/lib/recipe/grow/reference'
import type { Grows, RecipeLine } from '@/lib/recipe/recipe'
import { accent, branch, by, cluster, fixing, green, line, plant, trailing } from '../sample'
import { larger, pots } from './pots'

const firs = [green(1, 'noble fir'), green(2, 'silver fir'), green(3, 'boxwood'), green(4, 'pine', { unit: 'kg' })]
const others = [branch(5, 'birch'), trailing(6, 'cedar'), accent(7, 'cones'), cluster(8, 'globes'), plant(9, 'sage')]
const stakes = fixing(10, 'stakes')
const materials = by([...firs, ...others, stakes])

const whole = (min: number, max: number) => fc.integer({ min, max })
const odd = fc.constantFrom(1, 3, 5, 7)

const ways: readonly fc.Arbitrary<Grows>[] = [
	fc.record({ way: fc.constant('fixed' as const), count: whole(1, 9) }),
	fc.record({ way: fc.constant('stems' as const), count: whole(1, 40) }),
	fc.record({ way: fc.constant('rim' as const), count: whole(1, 30) }),
	fc.record({ way: fc.constant('faces' as const), count: odd }),
]
const greens = fc.record({ way: fc.constant('greens' as const), count: whole(1, 40) })
const held = fc.record({
	way: fc.constant('held' as const),
	count: whole(1, 4),
	holds: fc.constantFrom(null, ...others.map(({ id }) => id)),
})
const spacing = fc.record({ way: fc.constant('spacing' as const), share: whole(1, 100).map((n) => n / 100) })

const of = (among: typeof others, grows: fc.Arbitrary<Grows>): fc.Arbitrary<RecipeLine> =>
	fc.tuple(fc.constantFrom(...among), grows).map(([material, how]) => line(material, how))

/** Lines that each grow by themselves. */
const single = fc.oneof(of(others, fc.oneof(...ways)), of([stakes], held), of(others, spacing))
const recipes = fc.array(fc.oneof(single, of(firs, greens)), { minLength: 1, maxLength: 10 })

const countsOf = (lines: readonly RecipeLine[], at: typeof reference) =>
	grow(lines, at, materials).map(({ count }) => count)

/** Whole and weighed greens of a recipe, each summed: the split over kinds may move by one, their sum may not fall. */
function greensOf(lines: readonly RecipeLine[], at: typeof reference): [whole: number, kg: number] {
	const grown = grow(lines, at, materials).filter(({ grows }) => grows.way === 'greens')
	const sum = (isKg: boolean) =>
		grown
			.filter(({ material }) => (materials.get(material)?.unit === 'kg') === isKg)
			.reduce((total, { count }) => total + count, 0)
	return [sum(false), sum(true)]
}

describe('laws of growing', () => {
	test('the same pot in a larger size never gets fewer', () => {
		fc.assert(
			fc.property(recipes, pots, whole(1, 30), (lines, at, tenths) => {
				const than = larger(at, 1 + tenths / 10)
				const [before, after] = [countsOf(lines, at), countsOf(lines, than)]
				for (const [n, { grows }] of lines.entries()) {
					if (grows.way !== 'greens') expect(after[n]).toBeGreaterThanOrEqual(before[n] ?? 0)
				}
				const [few, many] = [greensOf(lines, at), greensOf(lines, than)]
				expect(many[0]).toBeGreaterThanOrEqual(few[0])
				expect(many[1]).toBeGreaterThanOrEqual(few[1] - 1e-9)
			}),
			{ numRuns: 600 },
		)
	})

	test('by a wall never more than all round', () => {
		fc.assert(
			fc.property(recipes, pots, (lines, at) => {
				const all = { ...at, stands: 'all round' as const }
				const wall = { ...at, stands: 'against a wall' as const }
				const [seen, less] = [countsOf(lines, all), countsOf(lines, wall)]
				for (const [n, { grows }] of lines.entries()) {
					if (grows.way !== 'greens') expect(less[n]).toBeLessThanOrEqual(seen[n] ?? 0)
				}
				expect(greensOf(lines, wall)[0]).toBeLessThanOrEqual(greensOf(lines, all)[0])
			}),
			{ numRuns: 400 },
		)
	})

	test('groups on a face stay odd up to seven', () => {
		fc.assert(
			fc.property(
				of([accent(7, 'cones')], fc.record({ way: fc.constant('faces' as const), count: odd })),
				pots,
				(each, at) => {
					const [count = 0] = countsOf([each], at)
					const group = count / viewedFaces(at, at.stands)
					expect(Number.isInteger(group)).toBe(true)
					if (group <= 7) expect(group % 2).toBe(1)
					const exact = (each.grows.way === 'faces' ? each.grows.count : 0) * Math.sqrt(openingRatio(at))
					expect(Math.abs(group - Math.max(1, exact))).toBeLessThanOrEqual(1 + 1e-9)
				},
			),
			{ numRuns: 400 },
		)
	})

	test('growing to the reference gives the recipe back', () => {
		const written = fc.array(fc.oneof(of(others.slice(0, 3), fc.oneof(...ways)), of(firs, greens)), { maxLength: 10 })
		const faces = reference.stands === 'all round' ? 3 : 0
		fc.assert(
			fc.property(written, (lines) => {
				const as = lines.map(({ grows }) => ('count' in grows ? grows.count : 0) * (grows.way === 'faces' ? faces : 1))
				expect(countsOf(lines, reference)).toEqual(as)
			}),
			{ numRuns: 400 },
		)
	})

	test('the order of the lines does not matter', () => {
		const told = (lines: readonly RecipeLine[], at: typeof reference) =>
			grow(lines, at, materials)
				.map((each) => JSON.stringify(each))
				.toSorted()
		fc.assert(
			fc.property(recipes, pots, (lines, at) => {
				expect(told(lines.toReversed(), at)).toEqual(told(lines, at))
			}),
			{ numRuns: 400 },
		)
	})

	test('every count is whole, or of kg to the thousandth, and at least one of what was written', () => {
		fc.assert(
			fc.property(recipes, pots, (lines, at) => {
				for (const { count, material, grows } of grow(lines, at, materials)) {
					const parts = materials.get(material)?.unit === 'kg' ? 1000 : 1
					expect(Math.abs(count * parts - Math.round(count * parts))).toBeLessThan(1e-9)
					if (grows.way !== 'held') expect(count).toBeGreaterThanOrEqual(1 / parts)
				}
			}),
			{ numRuns: 300 },
		)
	})
})
