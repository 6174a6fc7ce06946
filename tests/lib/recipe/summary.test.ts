import { describe, expect, test } from 'vitest'
import { summary } from '@/lib/recipe/summary'
import { accent, berry, branch, cluster, fixing, green, lights, plant, put, trailing } from './sample'

const birch = put(branch(1, 'white birch'), 5)
const dogwood = put(branch(2, 'red dogwood'), 12)
const greens = ['noble fir', 'boxwood', 'magnolia'].map((name, n) => put(green(3 + n, name), 7 + n))
const globes = put(cluster(8, 'clusters of brass globes'), 3)

describe('what one would tell a neighbour', () => {
	test.each([
		{
			name: 'a winter pot',
			lines: [greens, dogwood, birch, globes].flat(),
			says: 'Red dogwood and white birch up the middle, three greens, brass globes.',
		},
		{
			name: 'two greens are named',
			lines: [birch, ...greens.slice(0, 2)],
			says: 'White birch up the middle, noble fir and boxwood.',
		},
		{
			name: 'all of it, lights last and wire untold',
			lines: [
				put(lights(9, 'warm lights'), 2),
				put(trailing(10, 'cedar'), 9),
				put(fixing(11, 'wire'), 3),
				birch,
				...greens,
				globes,
			],
			says: 'White birch up the middle, three greens, cedar over the rim, brass globes, warm lights.',
		},
		{
			name: 'a summer pot',
			lines: [
				{ ...put(plant(12, 'fountain grass'), 1), role: 'thriller' as const },
				put(plant(13, 'silver sage'), 3),
				put(plant(14, 'mums'), 4),
			],
			says: 'Fountain grass up the middle, silver sage and mums.',
		},
		{
			name: 'the same material twice is told once',
			lines: [birch, birch, globes],
			says: 'White birch up the middle, brass globes.',
		},
		{
			name: 'what comes to nothing is not told',
			lines: [birch, { ...globes, count: 0 }],
			says: 'White birch up the middle.',
		},
		{ name: 'one thing', lines: [put(accent(15, 'iron lantern'), 1)], says: 'Iron lantern.' },
		{ name: 'nothing', lines: [], says: 'Nothing yet.' },
		{ name: 'nothing but wire', lines: [put(fixing(11, 'wire'), 3)], says: 'Nothing yet.' },
	])('$name: $says', ({ lines, says }) => {
		expect(summary(lines).says).toBe(says)
	})
})

describe('hazards', () => {
	const yew = put(green(20, 'yew', { hazards: ['poisonous to pets', 'poisonous to people'] }), 9)
	const holly = put(green(21, 'holly', { hazards: ['poisonous to people', 'poisonous to pets'] }), 4)
	const mums = put(plant(22, 'mums', { hazards: ['poisonous to pets'] }), 3)
	const pepper = put(plant(23, 'ornamental pepper', { hazards: ['poisonous to people'] }), 3)
	const faux = put(berry(24, 'faux plum berry'), 5)
	const pods = put(accent(25, 'dried pods', { hazards: ['small parts', 'poisonous to pets'] }), 5)

	test.each([
		{ name: 'nothing to tell', lines: [birch, globes], says: null },
		{
			name: 'poison for all',
			lines: [yew, birch, holly],
			says: 'Keep children and pets away from yew and holly (poisonous).',
		},
		{
			name: 'each to whom it concerns',
			lines: [faux, mums, pepper],
			says: 'Keep children away from ornamental pepper (poisonous). Keep pets away from mums (poisonous). Keep small children and pets away from faux plum berry (small parts).',
		},
		{
			name: 'twice dangerous',
			lines: [pods],
			says: 'Keep pets away from dried pods (poisonous). Keep small children and pets away from dried pods (small parts).',
		},
		{ name: 'what is not in the pot does not matter', lines: [{ ...yew, count: 0 }, birch], says: null },
	])('$name', ({ lines, says }) => {
		expect(summary(lines).hazards).toBe(says)
	})
})
