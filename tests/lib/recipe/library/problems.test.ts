import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { problems } from '@/lib/recipe/library/problems'
import type { RecipeLine } from '@/lib/recipe/recipe'
import { accent, branch, by, fixing, green, line, plant } from '../sample'

const birch = branch(1, 'white birch')
const fir = green(2, 'noble fir')
const kale = plant(3, 'kale')
const sage = plant(4, 'sage')
const stakes = fixing(5, 'stakes')
const globes = accent(6, 'brass globes')
const materials = by([birch, fir, kale, sage, stakes, globes])
const stems = line(birch, { way: 'stems', count: 12 })
const ball = line(globes, { way: 'faces', count: 1 })
const live = (share: number, of = kale) => line(of, { way: 'spacing', share })
const held = (holds: typeof birch.id | null) => line(stakes, { way: 'held', count: 1, holds })

type Case = { readonly name: string; readonly lines: readonly RecipeLine[]; readonly says: readonly unknown[] }

describe('what keeps a recipe from being kept', () => {
	test.each<Case>([
		{ name: 'stems held by stakes', lines: [stems, held(birch.id)], says: [] },
		{ name: 'plants that share all of it', lines: [live(0.6), live(0.4, sage)], says: [] },
		{ name: 'three thirds, as one writes them', lines: [live(0.333), live(0.333, sage), live(0.333)], says: [] },
		{ name: 'plants round stems that fill the rest', lines: [stems, live(0.7)], says: [] },
		{ name: 'what is lent and comes back', lines: [{ ...ball, holding: 'lent' }], says: [] },
		{
			name: 'nothing',
			lines: [],
			says: [{ at: null, field: 'lines', says: 'A recipe has one line at least: choose a material.' }],
		},
		{
			name: 'plants over the rim of the whole',
			lines: [stems, live(0.7), live(0.45, sage)],
			says: [
				{
					at: 2,
					field: 'count',
					says: 'The live plants take 115 % of the opening, more than there is: make it 100 % in all.',
				},
			],
		},
		{
			name: 'plants that leave it bare, with accents alone beside them',
			lines: [live(0.35), live(0.5, sage), ball],
			says: [
				{
					at: 1,
					field: 'count',
					says: 'The live plants take 85 % of the opening and nothing fills the rest: make it 100 % in all.',
				},
			],
		},
		{
			name: 'cut stems that are lent',
			lines: [{ ...stems, holding: 'lent' }],
			says: [{ at: 0, field: 'holding', says: 'white birch does not come back, so it cannot be lent.' }],
		},
		{
			name: 'stakes that hold what is not there',
			lines: [stems, held(fir.id)],
			says: [{ at: 1, field: 'holds', says: 'What this line holds is not in the recipe.' }],
		},
		{
			name: 'stakes that hold themselves',
			lines: [stems, held(stakes.id)],
			says: [{ at: 1, field: 'holds', says: 'A line cannot hold itself: say which other it holds.' }],
		},
	])('$name', ({ lines, says }) => {
		expect(problems(lines, materials)).toEqual(says)
	})

	test('law: shares alone are kept when, and only when, they come to a whole within half a per cent', () => {
		const share = fc.integer({ min: 1, max: 1000 }).map((n) => n / 1000)
		fc.assert(
			fc.property(fc.array(share, { minLength: 1, maxLength: 4 }), (shares) => {
				const sum = Math.round(shares.reduce((all, each) => all + each, 0) * 1000)
				fc.pre(Math.abs(sum - 1000) !== 5)
				const found = problems(
					shares.map((each) => live(each)),
					materials,
				)
				expect(found.length === 0).toBe(Math.abs(sum - 1000) < 5)
			}),
		)
	})
})
