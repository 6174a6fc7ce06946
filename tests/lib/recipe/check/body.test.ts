import { describe, expect, test } from 'vitest'
import { height } from '@/lib/recipe/check/body/height'
import { hold } from '@/lib/recipe/check/body/hold'
import { weight } from '@/lib/recipe/check/body/weight'
import { wind } from '@/lib/recipe/check/body/wind'
import { branch, green, plant, put, trailing } from '../sample'
import { setting, where } from './sample'

const birch = (lengthCm: number | null) => put(branch(1, 'white birch', { lengthCm }), 7)
const grass = (lengthCm: number) => put({ ...plant(2, 'fountain grass', { lengthCm }), role: 'thriller' }, 1)
const fir = put(green(3, 'noble fir'), 12)

// Inside 43.72 across, 45.72 high: √ of the product is 44.709, so 53.7 to 89.4 and best 67.1.
describe('height', () => {
	test.each([
		{ name: 'tall enough', lines: [birch(120), fir], keys: [] },
		{ name: 'long stems are cut', lines: [birch(240)], keys: [] },
		{
			name: 'one that is long enough stands for all',
			lines: [birch(40), { ...birch(120), material: branch(4, 'hazel') }],
			keys: [],
		},
		{ name: 'short stems', lines: [birch(60)], keys: ['height/short/look again'] },
		{ name: 'a plant that outgrows the pot', lines: [grass(110)], keys: ['height/tall/caution'] },
		{ name: 'nothing tall', lines: [fir], keys: ['height/none/caution'] },
		{ name: 'of no known length', lines: [birch(null)], keys: [] },
		{ name: 'nothing at all', lines: [], keys: [] },
	])('$name: $keys', ({ lines, keys }) => {
		expect(height(lines, setting).map(({ key }) => key)).toEqual(keys)
	})

	test('says how far, how far it might, and what would mend it', () => {
		expect(height([birch(60)], setting)[0]).toEqual({
			key: 'height/short/look again',
			weight: 'look again',
			says: 'White birch will reach 40 cm above the rim, where 53.7 cm to 89.4 cm suit this pot.',
			mend: 'Take longer stems or something taller: 67.1 cm is best.',
		})
		expect(height([grass(110)], where({ lengths: 'in' }))[0]?.says).toBe(
			'Fountain grass will reach 41.3 in above the rim, where 21.1 in to 35.2 in suit this pot: it would look top-heavy.',
		)
	})

	test('a plant before the glass', () => {
		const window = where({ pot: { sillToGlassCm: 30 } })
		expect(height([grass(36)], window)[0]?.says).toContain('31 cm above the rim, where 30 cm to 30 cm suit this pot')
		expect(height([grass(36)], window)[0]?.says).toContain('before the glass')
		expect(height([grass(35)], window)).toEqual([])
	})
})

describe('hold', () => {
	test.each([
		{ name: 'deep soil', lines: [birch(120)], at: setting, says: [] },
		{
			name: 'shallow soil',
			lines: [birch(120), fir],
			at: where({ pot: { soilDepthCm: 12.4 } }),
			says: ['The soil is 12.4 cm deep: too little to hold white birch, which should stand 15 cm in it.'],
		},
		{ name: 'just deep enough: 17 less 2', lines: [birch(120)], at: where({ pot: { soilDepthCm: 17 } }), says: [] },
		{ name: 'a plant holds by its roots', lines: [grass(70)], at: where({ pot: { soilDepthCm: 12.4 } }), says: [] },
		{ name: 'greens are short', lines: [fir], at: where({ pot: { soilDepthCm: 12.4 } }), says: [] },
	])('$name', ({ lines, at, says }) => {
		const found = hold(lines, at)
		expect(found.map((each) => each.says)).toEqual(says)
		for (const each of found)
			expect([each.key, each.mend]).toEqual([
				'hold/look again',
				'Set a frame or an anchor, or shorten what stands tall.',
			])
	})
})

describe('weight', () => {
	test('is not asked on firm ground', () => {
		expect(weight([fir], setting)).toEqual([])
	})

	test('the heaviest mix, the vessel by its walls, and what is in it', () => {
		// 42.26 L × 1.3, 6.29 kg of resin, 12 tips of 0.14 kg
		const [found] = weight([fir], where({ pot: { limitedWeight: 'balcony' } }))
		expect(found?.key).toBe('weight/look again')
		expect(found?.says).toBe(
			'Full and wet it weighs about 63 kg, its own weight estimated from its walls, and it stands on a balcony.',
		)
		expect(found?.mend).toContain('licensed engineer')
	})

	test('a vessel that was weighed, in pounds', () => {
		const at = where({ lengths: 'in', pot: { limitedWeight: 'railing', vesselKg: 9 } })
		expect(weight([], at)[0]?.says).toBe('Full and wet it weighs about 141 lb, and it hangs on a railing.')
	})
})

describe('wind', () => {
	const windy = where({ pot: { isWindy: true } })
	test.each([
		{ name: 'tall stems out of the wind', lines: [birch(120)], at: setting, keys: [] },
		{ name: 'tall stems in the wind', lines: [birch(120)], at: windy, keys: ['wind/look again'] },
		{
			name: 'a tall pot carries as much above as below',
			lines: [birch(85)],
			at: where({ pot: { isWindy: true, heightCm: 80 } }),
			keys: ['wind/caution'],
		},
		{ name: 'low stems', lines: [birch(60)], at: windy, keys: [] },
		{ name: 'what trails', lines: [put(trailing(5, 'cedar', { lengthCm: 120 }), 9)], at: windy, keys: [] },
	])('$name', ({ lines, at, keys }) => {
		expect(wind(lines, at).map(({ key }) => key)).toEqual(keys)
	})

	test('says how high and what would mend it', () => {
		const [found] = wind([birch(120), fir], windy)
		expect(found?.says).toBe(
			'It stands in the wind, and white birch will rise 67.1 cm above the rim, more than the pot is high.',
		)
		expect(found?.mend).toContain('ballast')
	})
})
