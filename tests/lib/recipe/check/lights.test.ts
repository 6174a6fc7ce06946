import { describe, expect, test } from 'vitest'
import { lights as check, mostWatts, wattsOf } from '@/lib/recipe/check/lights'
import { green, lights, materialId, put } from '../sample'
import { setting, where } from './sample'

const strings = (count: number, more = {}) =>
	put(lights(1, 'warm light strings', { watts: 24, mostEndToEnd: 5, ...more }), count)

describe('lights', () => {
	test.each([
		{ name: 'a few', lines: [strings(5)], at: setting, keys: [] },
		{ name: 'too many end to end', lines: [strings(6)], at: setting, keys: [`end to end/${materialId(1)}`] },
		{ name: 'the maker sets no limit', lines: [strings(40, { mostEndToEnd: null })], at: setting, keys: [] },
		{
			name: 'as much as the breaker carries: 1440 W',
			lines: [strings(60, { mostEndToEnd: null })],
			at: setting,
			keys: [],
		},
		{ name: 'more than it carries', lines: [strings(61, { mostEndToEnd: null })], at: setting, keys: ['circuit'] },
		{
			name: 'more with what hangs on it already',
			lines: [strings(5)],
			at: where({ circuit: { volts: 120, amps: 15, otherWatts: 1321 } }),
			keys: ['circuit'],
		},
		{ name: 'ninety days', lines: [strings(2)], at: where({ daysHung: 90 }), keys: [] },
		{ name: 'ninety-one', lines: [strings(2)], at: where({ daysHung: 91 }), keys: ['days hung'] },
		{ name: 'nobody has said how long', lines: [strings(2)], at: where({ daysHung: null }), keys: [] },
		{ name: 'no outlet', lines: [strings(2)], at: where({ pot: { outletNear: false } }), keys: ['outlet'] },
		{
			name: 'no lights',
			lines: [put(green(2, 'fir'), 9)],
			at: where({ daysHung: 200, pot: { outletNear: false } }),
			keys: [],
		},
	])('$name: $keys', ({ lines, at, keys }) => {
		expect(check(lines, at).map(({ key }) => key.replace(/\/[a-z ]*$/, ''))).toEqual(keys)
	})

	test('says what is planned, what is allowed and how to mend it', () => {
		const found = check([strings(61)], where({ daysHung: 104, pot: { outletNear: false } }))
		expect(found.map(({ says }) => says)).toEqual([
			'61 of warm light strings are planned, and their maker lets 5 run end to end.',
			'The lights take 1464 W, and a breaker of 15 A at 120 V may carry 1440 W for hours.',
			'The lights would hang 104 days; temporary wiring is for 90.',
			'No outlet is near this pot for warm light strings.',
		])
		expect(found[0]?.mend).toBe('Feed them in 13 runs, each from its own outlet.')
	})

	test('watts of lights alone, and of a breaker', () => {
		expect(
			wattsOf([strings(3), put(lights(3, 'cold lights', { watts: 7 }), 2), put(green(2, 'fir', { watts: 50 }), 9)]),
		).toBe(86)
		expect(mostWatts({ volts: 120, amps: 20, otherWatts: 500 })).toBe(1920)
	})
})
