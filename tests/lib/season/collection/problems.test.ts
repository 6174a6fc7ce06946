import { describe, expect, test } from 'vitest'
import { type Collection, collectionSchema, emptyCollection } from '@/lib/season/collection/collection'
import { problems } from '@/lib/season/collection/problems'
import { hex } from '@/lib/units/hex'
import { first } from '../../proposal/sample'
import { collection, recipeId, recipes } from './sample'

const says = (of: Collection) => problems(of, recipes).map((each) => each.says)
const withFirst = (change: Partial<Collection['designs'][number]>): Collection => ({
	...collection,
	designs: [{ ...first(collection.designs), ...change }, ...collection.designs.slice(1)],
})
const chosen = first(collection.designs).recipes

describe('what has to be mended before a collection is applied', () => {
	test('of a whole one nothing', () => {
		expect(says(collection)).toEqual([])
	})

	test('of an empty one: title, letter, designs', () => {
		expect(says(emptyCollection)).toEqual([
			'Give it the title that its proposals bear.',
			'Write the letter.',
			'Make at least one design.',
		])
	})

	test.each<[string, Partial<Collection['designs'][number]>, string[]]>([
		['no name', { name: '' }, ['Give the design a name.']],
		['no recipe', { recipes: { ...chosen, pot: null } }, ['“Plum dusk” has no recipe yet: choose one for pots.']],
		[
			'an empty recipe',
			{ recipes: { ...chosen, bowl: recipeId(3) } },
			['“Plum dusk”: the recipe “Not written yet” is empty, so nothing would go into a bowl.'],
		],
		[
			'a recipe that is gone',
			{ recipes: { ...chosen, box: recipeId(9) } },
			['“Plum dusk”: its recipe for a box is no longer in the library.'],
		],
		['no colour', { palette: [] }, ['“Plum dusk” has no colours yet.']],
		[
			'one colour',
			{ palette: [{ name: 'Plum', hex: hex('#6a2f4b') }] },
			['“Plum dusk” has one colour alone: a palette takes two at least.'],
		],
		['a name that another has', { name: 'BELL brass' }, ['Two designs have the same name.']],
	])('%s', (_, change, expected) => {
		expect(says(withFirst(change))).toEqual(expected)
	})

	test('an extra of nothing', () => {
		const [extra] = collection.extras
		const bare = { ...collection, extras: [{ ...first(extra ? [extra] : []), minutes: 0 }] }
		expect(says(bare)).toEqual(['A mid-winter refresh has neither material nor minutes, so no price.'])
	})
})

describe('what a collection cannot be at all', () => {
	test.each([
		['nine designs', { ...collection, designs: Array.from({ length: 9 }, () => first(collection.designs)) }],
		['a field more', { ...collection, priceCents: 1 }],
		['a recipe that is no id', withFirst({ recipes: { ...chosen, ...JSON.parse('{"pot":"x"}') } })],
		['another version', { ...collection, v: 2 }],
	])('%s', (_, bad) => {
		expect(collectionSchema.safeParse(collection).success).toBe(true)
		expect(collectionSchema.safeParse(bad).success).toBe(false)
	})
})
