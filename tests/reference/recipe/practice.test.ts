import { afterAll, describe, expect, test } from 'vitest'
import { hold } from '@/lib/recipe/check/body/hold'
import { grow } from '@/lib/recipe/grow/grow'
import { type Pot, reference } from '@/lib/recipe/grow/reference'
import { heightBand } from '@/lib/recipe/height'
import type { RecipeLine } from '@/lib/recipe/recipe'
import { where } from '../../lib/recipe/check/sample'
import { pot } from '../../lib/recipe/grow/pots'
import { branch, by, cluster, fixing, green, lights, line, put, trailing } from '../../lib/recipe/sample'

const [top, dogwood] = [branch(1, 'birch top'), branch(2, 'red dogwood')]
const greens = [green(3, 'noble fir'), green(4, 'silver fir'), green(5, 'boxwood')]
const [cedar, globes] = [trailing(6, 'cedar'), cluster(7, 'brass globes')]
const [strings, stakes] = [lights(8, 'warm lights'), fixing(9, 'stakes')]
const materials = by([top, dogwood, ...greens, cedar, globes, strings, stakes])

/** A plausible winter, for the reference of 18 inches. */
const winter: readonly RecipeLine[] = [
	line(top, { way: 'fixed', count: 1 }),
	line(dogwood, { way: 'stems', count: 12 }),
	...greens.map((each, n) => line(each, { way: 'greens', count: [9, 6, 5][n] ?? 0 })),
	line(cedar, { way: 'rim', count: 9 }),
	line(globes, { way: 'faces', count: 1 }),
	line(strings, { way: 'held', count: 1, holds: null }),
	line(stakes, { way: 'held', count: 0.25, holds: dogwood.id }),
]

type Counts = {
	readonly top: number
	readonly stems: number
	readonly greens: number
	readonly rim: number
	readonly clusters: number
	readonly strings: number
}

function countsAt(at: Pot): Counts {
	const grown = grow(winter, at, materials)
	const of = (...some: readonly { readonly id: string }[]) =>
		grown.filter(({ material }) => some.some(({ id }) => id === material)).reduce((sum, { count }) => sum + count, 0)
	return {
		top: of(top),
		stems: of(dogwood),
		greens: of(...greens),
		rim: of(cedar),
		clusters: of(globes),
		strings: of(strings),
	}
}

type Case = {
	readonly name: string
	readonly at: Pot & { readonly sillToGlassCm: number | null }
	readonly is: Counts
	readonly inches: number
}

// What one who fills pots expects of each (common practice, no published source): 18 inches 12 stems, 20 greens, 9 spillers and
// 3 clusters; a square of 24 inches 23, 46, 15 and 4, and 35 inches above the rim. A box has its stems by length ÷ 40 cm: 26
// are many for one of 36 inches, and about half would do.
const cases: readonly Case[] = [
	{
		name: '18 in round, all round',
		at: { ...reference, sillToGlassCm: null },
		is: { top: 1, stems: 12, greens: 20, rim: 9, clusters: 3, strings: 1 },
		inches: 26,
	},
	{
		name: '16 in round, by a wall',
		at: { ...pot([16, null, 16], { stands: 'against a wall' }), sillToGlassCm: null },
		is: { top: 1, stems: 10, greens: 12, rim: 5, clusters: 1, strings: 1 },
		inches: 23,
	},
	{
		name: '24 in square, all round',
		at: { ...pot([24, 24, 24], { shape: 'square' }), sillToGlassCm: null },
		is: { top: 1, stems: 23, greens: 46, rim: 15, clusters: 4, strings: 2 },
		inches: 35,
	},
	{
		name: '36 × 8 in window box',
		at: { ...pot([36, 8, 8], { shape: 'window box', wallCm: 2, stands: 'against a wall' }), sillToGlassCm: 35 },
		is: { top: 3, stems: 26, greens: 15, rim: 8, clusters: 3, strings: 1 },
		inches: 11,
	},
	{
		name: '20 × 8 in low bowl',
		at: { ...pot([20, null, 8], { shape: 'bowl', bottomCm: 20, wallCm: 2.5 }), sillToGlassCm: null },
		is: { top: 1, stems: 13, greens: 22, rim: 9, clusters: 3, strings: 1 },
		inches: 18,
	},
]

const inchesOf = (cm: number) => Math.round(cm / 2.54)

describe('a winter grown to what stands at doors', () => {
	test.each(cases)('$name', ({ at, is, inches }) => {
		expect(countsAt(at)).toEqual(is)
		expect(inchesOf(heightBand(at).bestCm)).toBe(inches)
	})

	test('box and bowl are too shallow to hold tall stems, and the check says so', () => {
		const told = cases.map(({ at }) => hold([put(dogwood, 7)], where({ pot: at })).map(({ key }) => key))
		expect(told).toEqual([[], [], [], ['hold/look again'], ['hold/look again']])
	})

	// abc7chicago.com, 16 November 2023, a garden centre's winter recipe for a pot of 12 inches: one spruce top, 5 red dogwood,
	// and of four greens (5 white pine, 3 to 5 each of noble fir, incense cedar and juniper) 14 to 20.
	test('a published recipe for 12 inches', () => {
		const { top: tops, stems, greens: fill, rim } = countsAt(pot([12, null, 12]))
		expect(tops).toBe(1)
		expect(Math.abs(stems - 5)).toBeLessThanOrEqual(1)
		expect(fill + rim).toBeGreaterThanOrEqual(14)
		expect(fill + rim).toBeLessThanOrEqual(20)
	})

	afterAll(() => {
		const rows = cases.map(({ name, at }) => {
			const { lowCm, bestCm, highCm } = heightBand(at)
			const { top: tops, stems, greens: fill, rim, clusters, strings: lit } = countsAt(at)
			const height = `${inchesOf(lowCm)} to ${inchesOf(highCm)} in above the rim, best ${inchesOf(bestCm)}`
			return `${name}: top ${tops}, stems ${stems}, greens ${fill}, over the rim ${rim}, clusters ${clusters}, strings ${lit}; ${height}`
		})
		process.stdout.write(`${rows.join('\n')}\n`)
	})
})
