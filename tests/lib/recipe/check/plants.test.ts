import { describe, expect, test } from 'vitest'
import { hardiness } from '@/lib/recipe/check/plants/hardiness'
import { hazards } from '@/lib/recipe/check/plants/hazards'
import { light } from '@/lib/recipe/check/plants/light'
import { months } from '@/lib/recipe/check/plants/months'
import { regulated } from '@/lib/recipe/check/plants/regulated'
import { rootBalls } from '@/lib/recipe/check/plants/root-balls'
import { accent, berry, branch, fixing, green, materialId, plant, put } from '../sample'
import { setting, where } from './sample'

const told = (found: readonly { readonly weight: string; readonly says: string }[]) =>
	found.map(({ weight, says }) => `${weight}: ${says}`)

describe('light against plant', () => {
	const sage = (wants: readonly ('sun' | 'part' | 'shade')[]) => put(plant(1, 'silver sage', { wants }), 3)
	test.each([
		{ name: 'as it wants', lines: [sage(['sun', 'part'])], at: 'part', says: [] },
		{ name: 'any will do', lines: [sage([])], at: 'shade', says: [] },
		{
			name: 'a step off',
			lines: [sage(['sun'])],
			at: 'part',
			says: ['caution: Silver sage will want sun, and this pot stands in part shade.'],
		},
		{
			name: 'two steps off',
			lines: [sage(['sun'])],
			at: 'shade',
			says: ['look again: Silver sage will want sun, and this pot stands in shade.'],
		},
		{
			name: 'the nearest of its wants counts',
			lines: [sage(['shade', 'part'])],
			at: 'sun',
			says: ['caution: Silver sage will want part shade or shade, and this pot stands in sun.'],
		},
		{
			name: 'cut stems do not mind',
			lines: [put(green(2, 'noble fir', { wants: ['sun'] }), 9)],
			at: 'shade',
			says: [],
		},
	] as const)('$name', ({ lines, at, says }) => {
		expect(told(light(lines, where({ pot: { light: at } })))).toEqual(says)
	})
})

describe('root ball against soil', () => {
	// the reference holds 42.3 L
	const mums = (count: number, rootBallLitres: number | null = 6) => put(plant(3, 'mums', { rootBallLitres }), count)
	test.each([
		{ name: 'room between them', lines: [mums(4)], keys: [] },
		{ name: 'hardly room', lines: [mums(5)], keys: ['root balls/caution'] },
		{ name: 'no room', lines: [mums(8)], keys: ['root balls/look again'] },
		{
			name: 'two kinds together',
			lines: [mums(4), put(plant(4, 'ivy', { rootBallLitres: 1 }), 6)],
			keys: ['root balls/caution'],
		},
		{ name: 'not known', lines: [mums(40, null)], keys: [] },
	])('$name: $keys', ({ lines, keys }) => {
		expect(rootBalls(lines, setting).map(({ key }) => key)).toEqual(keys)
	})

	test('says how much of each', () => {
		expect(rootBalls([mums(8)], where({ lengths: 'in' }))[0]?.says).toBe(
			'The root balls of mums take 12.7 gal, and the pot holds 11.2 gal of soil.',
		)
	})
})

describe('hardiness', () => {
	const heath = (zone: number | null) => put(plant(5, 'winter heath', { zone }), 3)
	test.each([
		{ name: 'two zones to spare', lines: [heath(4.5)], at: setting, weights: [] },
		{ name: 'one and a half', lines: [heath(5)], at: setting, weights: ['caution'] },
		{ name: 'one', lines: [heath(5.5)], at: setting, weights: ['caution'] },
		{ name: 'a half', lines: [heath(6)], at: setting, weights: ['look again'] },
		{ name: 'none', lines: [heath(8)], at: setting, weights: ['look again'] },
		{
			name: 'nothing overwinters in summer',
			lines: [heath(8)],
			at: where({ quarter: 'summer', month: 6 }),
			weights: [],
		},
		{ name: 'a place that nobody knows', lines: [heath(8)], at: where({ zone: null }), weights: [] },
		{
			name: 'what is cut is not alive',
			lines: [put(green(6, 'eucalyptus', { zone: 8 }), 3)],
			at: setting,
			weights: [],
		},
	])('$name: $weights', ({ lines, at, weights }) => {
		expect(hardiness(lines, at).map(({ weight }) => weight)).toEqual(weights)
	})

	test('says both zones and the one to look for', () => {
		expect(hardiness([heath(6)], setting)[0]).toMatchObject({
			key: `hardiness/${materialId(5)}/look again`,
			says: 'Winter heath can live through the winters of zone 6a; roots in a pot freeze harder, and this place is zone 6b.',
			mend: 'Take one hardy to zone 4b, or move it indoors before the ground freezes.',
		})
	})
})

describe('months', () => {
	const fir = (more: object) => put(green(7, 'silver fir', more), 9)
	test.each([
		{ name: 'to be had, and lasting', lines: [fir({ had: [11, 12], lasts: [11, 12, 1, 2, 3] })], says: [] },
		{
			name: 'not yet to be had',
			lines: [fir({ had: [12, 1] })],
			says: ['look again: Silver fir cannot be had in November.'],
		},
		{ name: 'not to be had, but in stock', lines: [fir({ had: [12], inStock: 9 })], says: [] },
		{
			name: 'too few in stock',
			lines: [fir({ had: [12], inStock: 8 })],
			says: ['look again: Silver fir cannot be had in November.'],
		},
		{
			name: 'gone in its last month',
			lines: [fir({ lasts: [11, 12, 1] })],
			says: ['caution: Silver fir will not stand through February, and it goes in for winter.'],
		},
		{
			name: 'gone for most of it',
			lines: [fir({ lasts: [11] })],
			says: [
				'look again: Silver fir will not stand through December, January and February, and it goes in for winter.',
			],
		},
		{ name: 'its card names no month', lines: [fir({ had: [], lasts: [] })], says: [] },
		{ name: 'wire is of every month', lines: [put(fixing(8, 'wire', { had: [5], lasts: [5] }), 1)], says: [] },
	])('$name', ({ lines, says }) => {
		expect(told(months(lines, setting))).toEqual(says)
	})
})

describe('hazards', () => {
	test.each([
		{
			name: 'marked',
			lines: [put(green(9, 'yew', { hazards: ['poisonous to people', 'poisonous to pets'] }), 9)],
			says: ['caution: Yew: poisonous to people and pets.'],
		},
		{
			name: 'small parts are not poison',
			lines: [put(berry(10, 'faux holly berry'), 5)],
			says: ['caution: Faux holly berry: of small parts.'],
		},
		{
			name: 'both',
			lines: [put(accent(11, 'dried pods', { hazards: ['small parts', 'poisonous to pets'] }), 5)],
			says: ['caution: Dried pods: poisonous to pets and of small parts.'],
		},
		{
			name: 'on the lists, and not on its card',
			lines: [put(green(12, 'boxwood'), 9)],
			says: ['look again: Boxwood: by published lists poisonous to people and pets, and its card does not say so.'],
		},
		{
			name: 'half of it on its card',
			lines: [put(branch(13, 'winterberry', { hazards: ['poisonous to people'] }), 9)],
			says: [
				'caution: Winterberry: poisonous to people.',
				'look again: Winterberry: by published lists poisonous to pets, and its card does not say so.',
			],
		},
		{ name: 'harmless', lines: [put(green(14, 'noble fir'), 9)], says: [] },
	] as const)('$name', ({ lines, says }) => {
		expect(told(hazards(lines, setting))).toEqual(says)
	})
})

describe('regulated plants', () => {
	test('why, and whom to ask', () => {
		const box = put(green(15, 'boxwood', { regulated: 'quarantine for the box tree moth.' }), 9)
		expect(regulated([box, put(green(16, 'noble fir'), 9)], setting)).toEqual([
			{
				key: `regulated/${materialId(15)}/caution`,
				weight: 'caution',
				says: 'Boxwood may not be traded everywhere: quarantine for the box tree moth.',
				mend: 'Ask the agriculture office of the state before it is bought or moved.',
			},
		])
	})
})
