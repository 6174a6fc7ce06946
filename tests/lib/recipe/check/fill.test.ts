import { describe, expect, test } from 'vitest'
import { oneGreen } from '@/lib/recipe/check/one-green'
import { fullKg, thinFill } from '@/lib/recipe/check/thin-fill'
import { unknown } from '@/lib/recipe/check/unknown'
import { branch, green, lights, plant, put, trailing } from '../sample'
import { setPot, setting, where } from './sample'

const fir = (count: number) => put(green(1, 'noble fir', { kgEach: 0.15 }), count)
const cedar = (count: number) => put(trailing(2, 'cedar', { kgEach: 0.09 }), count)
const pine = (kg: number) => put(green(3, 'white pine', { unit: 'kg', kgEach: null, piecesPerUnit: 20 }), kg)

// 2.4 kg of mixed greens on 1,000 cm²: common practice, no published source.
describe('thin fill', () => {
	test('what fills the reference: 2.4 × 1.5012, less behind a wall', () => {
		expect(fullKg(setPot)).toBeCloseTo(3.603, 3)
		expect(fullKg({ ...setPot, stands: 'against a wall' })).toBeCloseTo(2.882, 3)
	})

	test.each([
		{ name: 'full', lines: [fir(20), cedar(9)], keys: [] },
		{ name: 'four fifths are enough', lines: [fir(14), cedar(9)], keys: [] },
		{ name: 'thin', lines: [fir(12), cedar(9)], keys: ['thin/caution'] },
		{ name: 'bare', lines: [fir(6), cedar(9)], keys: ['thin/look again'] },
		{ name: 'by weight as it is bought', lines: [pine(2.9)], keys: [] },
		{ name: 'too little by weight', lines: [pine(2.8)], keys: ['thin/caution'] },
		{ name: 'no greens at all', lines: [put(plant(4, 'kale'), 5)], keys: [] },
		{
			name: 'greens of which no weight is known',
			lines: [put(green(5, 'yew', { kgEach: null }), 2), fir(1)],
			keys: [],
		},
	])('$name: $keys', ({ lines, keys }) => {
		expect(thinFill(lines, setting).map(({ key }) => key)).toEqual(keys)
	})

	test('says how much there is, how much fills it and what is missing', () => {
		expect(thinFill([fir(12), cedar(9)], setting)[0]).toMatchObject({
			says: 'The greens weigh 2.6 kg, where about 3.6 kg fill a pot of this opening: it would look thin.',
			mend: 'Add about 1 kg of greens, or take fuller ones.',
		})
	})
})

describe('one kind of greens', () => {
	test.each([
		{
			name: 'alone',
			lines: [fir(12), put(branch(6, 'birch'), 5)],
			says: 'All its greens are noble fir: one kind alone looks flat, and if it browns, all of it browns.',
		},
		{
			name: 'alone, in two roles',
			lines: [fir(12), { ...fir(5), role: 'spiller' as const }],
			says: 'All its greens are noble fir: one kind alone looks flat, and if it browns, all of it browns.',
		},
		{ name: 'with one that trails', lines: [fir(12), cedar(9)], says: undefined },
		{ name: 'no greens at all', lines: [put(plant(4, 'kale'), 5)], says: undefined },
	])('$name', ({ lines, says }) => {
		expect(oneGreen(lines, setting)[0]?.says).toBe(says)
	})
})

describe('what a card does not say', () => {
	const summer = where({ quarter: 'summer', month: 6 })
	test.each([
		{
			name: 'nothing is missing',
			lines: [fir(9), put(branch(6, 'birch'), 5), put(lights(7, 'lights'), 1)],
			at: setting,
			keys: [],
		},
		{
			name: 'a stem without length',
			lines: [put(branch(6, 'birch', { lengthCm: null }), 5)],
			at: setting,
			keys: ['length'],
		},
		{
			name: 'greens without weight',
			lines: [put(green(5, 'yew', { kgEach: null }), 5), pine(1)],
			at: setting,
			keys: ['weight'],
		},
		{
			name: 'a plant without anything',
			lines: [put(plant(4, 'kale', { spacingCm: null, rootBallLitres: null }), 5)],
			at: setting,
			keys: ['spacing', 'root ball', 'zone'],
		},
		{ name: 'a plant of summer needs no zone', lines: [put(plant(4, 'sage'), 5)], at: summer, keys: [] },
		{
			name: 'lights without watts',
			lines: [put(lights(7, 'lights', { watts: null }), 2)],
			at: setting,
			keys: ['watts'],
		},
		{
			name: 'a place without a zone',
			lines: [put(plant(4, 'heath', { zone: 4 }), 5)],
			at: where({ zone: null }),
			keys: ['place'],
		},
		{ name: 'a place without a zone and nothing alive', lines: [fir(20)], at: where({ zone: null }), keys: [] },
	])('$name: $keys', ({ lines, at, keys }) => {
		expect(unknown(lines, at).map(({ key }) => key)).toEqual(keys.map((each) => `unknown/${each}/caution`))
	})

	test('names them all in one sentence', () => {
		const lines = [put(branch(6, 'white birch', { lengthCm: null }), 5), put(branch(8, 'hazel', { lengthCm: null }), 3)]
		expect(unknown(lines, setting)[0]?.says).toBe(
			'White birch and hazel: no length on the card, so how high it stands cannot be told.',
		)
	})
})
