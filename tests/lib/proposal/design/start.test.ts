import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { grownLines } from '@/lib/proposal/design/grown-lines'
import { type Draft, type DraftLine, type DraftOption, draftSchema } from '@/lib/proposal/draft'
import type { Fresh, Ground } from '@/lib/proposal/start/fresh'
import { type Another, fromAnother } from '@/lib/proposal/start/from-another'
import { type Earlier, fromEarlier } from '@/lib/proposal/start/from-earlier'
import { fromRecipe } from '@/lib/proposal/start/from-recipe'
import { reference } from '@/lib/recipe/grow/reference'
import { cents } from '@/lib/units/cents'
import { day } from '@/lib/units/day'
import { collection, facts, ground, recipes } from '../../season/collection/sample'
import { card, containerId, first, materialId, placeId, typed } from '../sample'

const house = first(recipes)
const potOf = (option: DraftOption | undefined, n: number): readonly DraftLine[] =>
	option?.pots.find(({ container }) => container === containerId(n))?.lines ?? []
const countOf = (lines: readonly DraftLine[], n: number) =>
	lines.find(({ material }) => material === materialId(n))?.count

const lines = (...more: DraftLine[]): DraftLine[] => [
	typed(21, 'thriller', 9),
	typed(28, 'filler', 14),
	typed(29, 'spiller', 8),
	typed(24, 'accent', 3, 'lent'),
	...more,
]
const option = (key: string, name: string, pots: DraftOption['pots']): DraftOption => ({
	...{ key, name, pots, supplementCents: cents(4100) },
	palette: [{ name: 'Brass', hex: first(first(collection.designs).palette).hex, echoes: 'echoes your pans' }],
})
/** What they had: dates, a letter, notes, a price, an extra, and a container that is gone. */
const then: Draft = {
	...ground.draft,
	title: 'Winter 2025',
	letter: 'Last year’s words.',
	window: { from: day('2025-11-17'), to: day('2025-11-21') },
	answerBy: day('2025-10-31'),
	takeDown: true,
	containers: [1, 2, 8].map((n) => ({ id: containerId(n), mayLeaveOut: n === 2, isNew: true })),
	options: [
		option('a', 'Bell brass', [
			{ container: containerId(1), lines: lines(typed(26, 'accent', 2, 'own')) },
			{ container: containerId(2), lines: lines() },
			{ container: containerId(8), lines: lines() },
		]),
		option('b', 'Plum dusk', [{ container: containerId(1), lines: lines() }]),
	],
	extras: [
		{ key: 'w', name: 'Wreath', words: 'Hung by us', place: placeId(1), minutes: 12, lines: [typed(26, 'accent', 4)] },
		{ key: 'x', name: 'Garland', words: '', place: placeId(7), minutes: 9, lines: [] },
	],
	agreement: { is: 'fixed', cents: cents(88_000), containers: [containerId(1)] },
	overruled: [{ option: 'a', container: containerId(1), check: 'height/caution', note: 'As they wish.' }],
}
const vessels = new Map([1, 2, 8].map((n) => [containerId(n), facts.cards[n - 1] ?? card(8, 'Gone')]))
const earlier: Earlier = { draft: then, season: { quarter: 'winter', year: 2025 }, approved: 'a', vessels }
const another: Another = { draft: then, vessels }

const retiredIn = (of: Ground, gone: readonly string[]): Ground => ({
	...of,
	facts: {
		...of.facts,
		materials: new Map([...of.facts.materials].map(([id, each]) => [id, { ...each, isRetired: gone.includes(id) }])),
	},
})

describe('from an earlier season', () => {
	const { draft, told } = fromEarlier(earlier, ground)

	test('what was approved comes back, and nothing of its time', () => {
		expect(draft.options.map(({ name }) => name)).toEqual(['Bell brass'])
		expect([draft.window, draft.answerBy, draft.letter]).toEqual([ground.draft.window, null, ''])
		expect([draft.agreement, draft.overruled, draft.takeDown]).toEqual([{ is: 'none' }, [], false])
		expect([first(draft.options).supplementCents, draft.design, draft.title]).toEqual([0, 'repeat', 'Bell brass'])
		expect(draft.containers).toEqual([1, 2, 3].map((n) => ({ id: containerId(n), mayLeaveOut: n === 2, isNew: false })))
		expect(first(first(draft.options).palette).echoes).not.toBe('echoes your pans')
	})

	test('with none approved, all that was offered', () => {
		const all = fromEarlier({ ...earlier, approved: null }, ground).draft.options
		expect(all.map(({ name }) => name)).toEqual(['Bell brass', 'Plum dusk'])
	})

	test('counts stay in the same container of the same measures', () => {
		expect(potOf(draft.options[0], 1)).toEqual(lines(typed(26, 'accent', 2, 'own')))
		expect(countOf(potOf(draft.options[0], 2), 21)).toEqual({ way: 'typed', value: 9 })
	})

	test('and grow where it is another, or larger now', () => {
		expect(countOf(potOf(draft.options[0], 3), 21)?.way).toBe('grown')
		const larger = facts.cards.map((each) => (each.id === containerId(2) ? { ...each, topCm: 70, bottomCm: 60 } : each))
		const grown = fromEarlier(earlier, { ...ground, facts: { ...facts, cards: larger } }).draft
		const stems = countOf(potOf(grown.options[0], 2), 21)
		expect(stems?.way).toBe('grown')
		expect(stems?.value).toBeGreaterThan(9)
		expect(countOf(potOf(grown.options[0], 1), 21)).toEqual({ way: 'typed', value: 9 })
	})

	test('a count kept by hand stays kept in the same container alone', () => {
		const kept: DraftLine = {
			...typed(21, 'thriller', 0),
			count: { way: 'grown', value: 17, grows: { way: 'stems', count: 12 }, isKept: true },
		}
		const held = { ...then, options: [option('a', 'Bell brass', [{ container: containerId(1), lines: [kept] }])] }
		const made = fromEarlier({ ...earlier, draft: held }, ground).draft.options[0]
		expect(countOf(potOf(made, 1), 21)).toMatchObject({ value: 17, isKept: true })
		expect(countOf(potOf(made, 2), 21)).toMatchObject({ isKept: false })
		expect(countOf(potOf(made, 2), 21)?.value).not.toBe(17)
	})

	test('an extra comes back where its place is still theirs', () => {
		expect(draft.extras.map(({ name }) => name)).toEqual(['Wreath'])
	})

	test('says what is gone', () => {
		expect(told).toEqual(['One container of then is gone since winter 2025–26.'])
	})

	test('what is no longer taken is replaced by the nearest that is, or left out', () => {
		const without = fromEarlier(earlier, retiredIn(ground, [materialId(24)]))
		expect(without.told.filter((says) => says.startsWith('Instead of brass globes, no longer taken: '))).toHaveLength(1)
		expect(potOf(without.draft.options[0], 1).some(({ material }) => material === materialId(24))).toBe(false)
		const alone = retiredIn(ground, [materialId(29)])
		expect(fromEarlier(earlier, alone).told).toContain('Left out, since nothing like it is taken any more: cedar.')
	})
})

describe('from another client', () => {
	const { draft } = fromAnother(another, ground)

	test('palettes and what goes with them, grown anew; nothing that is theirs alone', () => {
		expect(draft.options.map(({ name }) => name)).toEqual(['Bell brass', 'Plum dusk'])
		expect([draft.letter, draft.extras, draft.overruled, draft.agreement]).toEqual(['', [], [], { is: 'none' }])
		const all = draft.options.flatMap(({ pots }) => pots.flatMap((pot) => pot.lines))
		expect(all.every(({ count }) => count.way === 'grown' && !count.isKept)).toBe(true)
		expect(all.every(({ holding }) => holding !== 'own')).toBe(true)
		expect(first(first(draft.options).palette).echoes).not.toBe('echoes your pans')
	})

	test('each container takes after the one that is most like it', () => {
		const box = facts.cards[2]
		if (box === undefined) throw new Error('There is no box.')
		const theirs = new Map([
			[containerId(21), card(21, 'Pot')],
			[containerId(22), { ...box, id: containerId(22) }],
		])
		const pots = [
			{ container: containerId(21), lines: [typed(21, 'thriller', 12)] },
			{ container: containerId(22), lines: [typed(30, 'thriller', 7)] },
		]
		const made = fromAnother({ draft: { ...then, options: [option('a', 'Two', pots)] }, vessels: theirs }, ground)
		const stems = (n: number) => potOf(made.draft.options[0], n).map(({ material }) => material)
		expect([stems(1), stems(2), stems(3)]).toEqual([[materialId(21)], [materialId(21)], [materialId(30)]])
		expect(countOf(potOf(made.draft.options[0], 3), 30)?.value).toBe(7)
	})
})

describe('from a recipe', () => {
	test('grown to the reference it is the recipe', () => {
		const cards = [{ ...first(facts.cards), ...reference }]
		const made = fromRecipe(house, { ...ground, facts: { ...facts, cards } }).draft
		const counts = first(first(made.options).pots).lines.map(({ material, count }) => [material, count.value])
		expect(counts).toEqual([
			[materialId(21), 12],
			[materialId(28), 12],
			[materialId(31), 8],
			[materialId(29), 9],
			[materialId(24), 3],
		])
	})

	test('is one palette of the recipe’s name and colours', () => {
		const { draft } = fromRecipe(house, ground)
		const [made] = draft.options
		expect([made?.name, draft.title, draft.options.length]).toEqual(['House winter', 'House winter', 1])
		expect(made?.palette.map(({ hex }) => hex)).toEqual(['#bb9346', '#8f2c2f', '#3d6147', '#4f7350'])
	})
})

describe('wherever it is started from', () => {
	const measure = fc.integer({ min: 26, max: 110 })
	const grounds = fc
		.tuple(measure, measure, fc.subarray([...facts.materials.keys()], { maxLength: 5 }))
		.map(([one, two, gone]): Ground => {
			const across = [one, two, 91]
			const cards = facts.cards.map((each, index) => {
				const topCm = across[index] ?? 40
				return { ...each, topCm, bottomCm: topCm - 5 }
			})
			return retiredIn({ ...ground, facts: { ...facts, cards } }, gone)
		})
	const ways: Readonly<Record<string, (of: Ground) => Fresh>> = {
		'an earlier season': (of) => fromEarlier(earlier, of),
		'another client': (of) => fromAnother(another, of),
		'a recipe': (of) => fromRecipe(house, of),
	}

	test.each(Object.entries(ways))('%s: only what is theirs and taken, the same twice, fit to be kept', (_, make) => {
		fc.assert(
			fc.property(grounds, (of) => {
				const { draft } = make(of)
				const own = new Set<string>([...of.facts.cards, ...of.facts.sites].map(({ id }) => id))
				const pots = draft.options.flatMap((each) => each.pots)
				const named = [...pots, ...draft.extras].flatMap((each) => each.lines)
				expect(pots.every(({ container }) => own.has(container))).toBe(true)
				expect(draft.containers.every(({ id }) => own.has(id))).toBe(true)
				expect(draft.extras.every(({ place }) => own.has(place))).toBe(true)
				expect(named.every(({ material }) => of.facts.materials.get(material)?.isRetired === false)).toBe(true)
				expect(make(of)).toEqual(make(of))
				expect(draftSchema.safeParse(draft).success).toBe(true)
			}),
			{ numRuns: 12 },
		)
	})

	test('a count that was typed is found again where it was typed', () => {
		const whole = fc.integer({ min: 1, max: 40 })
		fc.assert(
			fc.property(measure, whole, whole, whole, (across, stems, greens, rim) => {
				const pot = card(1, 'Pot', { topCm: across, bottomCm: across - 5 })
				const hand = [typed(21, 'thriller', stems), typed(28, 'filler', greens), typed(29, 'spiller', rim)]
				const theirs = { ...then, options: [option('a', 'A', [{ container: containerId(9), lines: hand }])] }
				const made = fromAnother(
					{ draft: theirs, vessels: new Map([[containerId(9), pot]]) },
					{ ...ground, facts: { ...facts, cards: [pot] } },
				)
				const grown = potOf(made.draft.options[0], 1)
				expect(grown.map(({ count }) => count.value)).toEqual([stems, greens, rim])
				const recipe = grown.flatMap(({ count, ...rest }) =>
					count.way === 'grown' ? [{ ...rest, grows: count.grows }] : [],
				)
				expect(grownLines(recipe, [], pot, facts.materials)).toEqual(grown)
			}),
		)
	})
})
