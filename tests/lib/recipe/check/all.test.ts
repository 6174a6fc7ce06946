import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { all } from '@/lib/recipe/check/all'
import { finding, overruled } from '@/lib/recipe/check/finding'
import { branch, green, materialId, plant, put, trailing } from '../sample'
import { setting, where } from './sample'

const birch = put(branch(1, 'white birch'), 12)
const winter = [
	birch,
	put(green(2, 'noble fir', { kgEach: 0.16 }), 12),
	put(green(3, 'silver fir'), 8),
	put(trailing(4, 'cedar'), 9),
]

describe('all checks', () => {
	test('find nothing in a sound winter pot', () => {
		expect(all(winter, setting)).toEqual([])
	})

	test('an empty pot is told once', () => {
		expect(all([], where({ pot: { limitedWeight: 'roof' } })).map(({ says }) => says)).toEqual([
			'Nothing is in this pot yet.',
		])
	})

	test('each check is asked, and what weighs most comes first', () => {
		const heath = plant(5, 'heath', {
			zone: 8,
			wants: ['sun'],
			rootBallLitres: 9,
			regulated: 'invasive',
			had: [5],
			lasts: [11, 12, 1],
		})
		const box = put(green(6, 'boxwood', { kgEach: 0.05 }), 3)
		const short = put(branch(7, 'dogwood', { lengthCm: 40 }), 3)
		const string = put({ ...branch(8, 'lights', { watts: null }), kind: 'light', role: 'accent' }, 2)
		const place = where({ pot: { isWindy: true, limitedWeight: 'deck', soilDepthCm: 12 }, daysHung: 120 })
		const keys = all([put(heath, 4), box, short, string], place).map(({ key }) => key)
		expect(keys).toEqual([
			'height/short/look again',
			'hold/look again',
			'thin/look again',
			'root balls/look again',
			`hardiness/${materialId(5)}/look again`,
			`had/${materialId(5)}/look again`,
			'weight/look again',
			'days hung/look again',
			`listed/${materialId(6)}/look again`,
			'one green/caution',
			`light/${materialId(5)}/caution`,
			`lasts/${materialId(5)}/caution`,
			`regulated/${materialId(5)}/caution`,
			'unknown/watts/caution',
		])
		const windy = where({ pot: { isWindy: true } })
		expect(all([birch], windy).map(({ key }) => key)).toEqual(['wind/look again'])
	})

	test('what was found elsewhere takes its place among them', () => {
		const lost = finding('lost/birch', 'look again', 'The birch is lost against the wall.', 'Take a darker stem.')
		const palette = finding('palette/last year', 'caution', 'It is last year’s palette.', 'Take another.')
		expect(all([birch, put(green(2, 'noble fir'), 30)], setting, [palette, lost]).map(({ key }) => key)).toEqual([
			'lost/birch/look again',
			'one green/caution',
			'palette/last year/caution',
		])
	})

	test('lines of one material are taken together, and told once', () => {
		const yew = put(green(10, 'yew'), 4)
		const strings = put({ ...branch(11, 'lights', { watts: 20, mostEndToEnd: 3 }), kind: 'light', role: 'accent' }, 2)
		const lines = [...winter, yew, { ...yew, role: 'spiller' as const }, strings, strings]
		expect(all(lines, setting).map(({ key }) => key)).toEqual([
			`end to end/${materialId(11)}/look again`,
			`listed/${materialId(10)}/look again`,
		])
	})

	test('every sentence ends, every key is there once, whatever the lines', () => {
		const counts = fc.array(fc.integer({ min: 1, max: 40 }), { minLength: 4, maxLength: 4 })
		fc.assert(
			fc.property(counts, fc.integer({ min: 2, max: 13 }), fc.integer({ min: 1, max: 12 }), (of, zone, month) => {
				const lines = [...winter.slice(0, 3), put(plant(9, 'yew', { zone: 5, wants: ['shade'] }), 1)]
				const counted = lines.map((each, n) => ({ ...each, count: of[n] ?? 1 }))
				const found = all(counted, where({ zone, month, pot: { limitedWeight: 'roof', isWindy: true } }))
				expect(new Set(found.map(({ key }) => key)).size).toBe(found.length)
				for (const { says, mend } of found) {
					expect(says).toMatch(/^[A-Z0-9].*\.$/)
					expect(mend).toMatch(/^[A-Z].*\.$/)
				}
			}),
			{ numRuns: 200 },
		)
	})
})

describe('a check that is overruled', () => {
	const thin = finding('thin', 'caution', 'It would look thin.', 'Add greens.')
	const hold = finding('hold', 'look again', 'Nothing holds.', 'Set a frame.')

	test.each([
		{
			name: 'with a note',
			notes: [['thin/caution', ' They like it airy. ']],
			open: [hold],
			note: 'They like it airy.',
		},
		{ name: 'not by an empty one', notes: [['thin/caution', '  ']], open: [thin, hold], note: undefined },
		{
			name: 'not by a note on something else',
			notes: [['weight/look again', 'Asked.']],
			open: [thin, hold],
			note: undefined,
		},
		{ name: 'not when it has become worse', notes: [['hold/caution', 'Wired.']], open: [thin, hold], note: undefined },
	] as const)('$name', ({ notes, open, note }) => {
		const judged = overruled([thin, hold], new Map(notes))
		expect(judged.open).toEqual(open)
		expect(judged.overruled[0]?.note).toBe(note)
		expect(judged.open.length + judged.overruled.length).toBe(2)
	})
})
