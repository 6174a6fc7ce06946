import { describe, expect, test } from 'vitest'
import { picture } from '@/lib/picture/picture'
import { describeScene } from '@/lib/picture/words/describe-scene'
import { plannedIn } from '@/lib/recipe/library/grown-to'
import { inReference } from '@/lib/recipe/library/in-reference'
import { recipeScene } from '@/lib/recipe/library/scene'
import { usualHolding, usualWay } from '@/lib/recipe/library/usual'
import { accent, branch, by, fixing, green, lights, line, plant, put, trailing } from '../sample'

const birch = branch(1, 'white birch')
const fir = green(2, 'noble fir')
const cedar = trailing(3, 'cedar')
const globes = accent(4, 'brass globes')
const keys = (found: ReturnType<typeof inReference>) => found.map(({ key }) => key.split('/')[0])

describe('a recipe in the pot that it is written for', () => {
	test('one kind of greens, too few of them', () => {
		expect(keys(inReference([put(birch, 12), put(fir, 3)], 'winter', 'in'))).toEqual(
			expect.arrayContaining(['thin', 'one green']),
		)
	})

	test('asks nothing of a place that it does not know: its light, its cold, its outlet', () => {
		const sunny = plant(5, 'sage', { wants: ['sun'], zone: 7, lengthCm: 30 })
		const asked = keys(inReference([put(sunny, 8), put(lights(6, 'warm lights'), 2)], 'winter', 'in'))
		for (const about of ['light', 'hardiness', 'outlet']) expect(asked).not.toContain(about)
	})

	test('says which plant does not suit the light of the others', () => {
		const sun = [plant(7, 'sage', { wants: ['sun'] }), plant(8, 'lavender', { wants: ['sun', 'part'] })]
		const fern = plant(9, 'fern', { wants: ['shade'] })
		const found = inReference(
			[...sun, fern].map((each) => put(each, 3)),
			'summer',
			'in',
		)
		const lit = found.filter(({ key }) => key.startsWith('light/'))
		expect(lit.map(({ key }) => key)).toEqual([`light/${fern.id}/look again`])
	})

	test('months are those of its season', () => {
		const early = branch(10, 'quince', { had: [2, 3], lasts: [3, 4, 5] })
		expect(keys(inReference([put(early, 9)], 'winter', 'in'))).toContain('had')
		expect(keys(inReference([put(early, 9)], 'spring', 'in'))).not.toContain('had')
	})
})

describe('its picture', () => {
	const lines = [
		line(birch, { way: 'stems', count: 12 }),
		line(fir, { way: 'greens', count: 14 }),
		line(cedar, { way: 'rim', count: 9 }),
		line(globes, { way: 'faces', count: 1 }),
	]
	const materials = by([birch, fir, cedar, globes])

	test.each(['reference', 'box'] as const)(
		'grown to the %s, is the same every time and tells what stands in it',
		(pot) => {
			const scene = recipeScene({ quarter: 'winter', lines }, pot, materials, 'in')
			expect(scene.pots).toHaveLength(1)
			expect(scene.pots[0]?.lines.map(({ count }) => count)).toEqual(
				plannedIn(pot, lines, materials).map(({ count }) => count),
			)
			const drawn = picture(scene, { ratio: 1.27, zoom: 'pot' })
			expect(drawn).toBe(picture(scene, { ratio: 1.27, zoom: 'pot' }))
			expect(describeScene(scene)).toContain('white birch')
		},
	)

	test('a recipe of which nothing is left draws the pot alone', () => {
		expect(describeScene(recipeScene({ quarter: 'winter', lines: [] }, 'bowl', materials, 'cm'))).toContain(
			'Nothing is planted yet.',
		)
	})
})

test.each([
	[birch, 'stems', 'sold'],
	[fir, 'greens', 'sold'],
	[cedar, 'rim', 'sold'],
	[globes, 'faces', 'lent'],
	[plant(11, 'kale'), 'spacing', 'sold'],
	[lights(12, 'warm lights'), 'fixed', 'lent'],
	[fixing(13, 'stakes'), 'held', 'sold'],
] as const)('$0.name: $1 and $2 as usual', (material, way, holding) => {
	expect([usualWay(material, material.role), usualHolding(material.kind)]).toEqual([way, holding])
})
