import { describe, expect, test } from 'vitest'
import { draftSchema, emptyDraft } from '@/lib/proposal/draft'
import { day } from '@/lib/units/day'
import { draft, first, typed } from './sample'

const option = (more: object) => ({ ...draft, options: [{ ...first(draft.options), ...more }] })
const extra = (more: object) => ({ ...draft, extras: [{ ...first(draft.extras), ...more }] })
const counted = (value: number) => extra({ lines: [{ ...typed(1, 'accent', 1), count: { way: 'typed', value } }] })

describe('a draft as it is kept', () => {
	test('reads back as it was', () => {
		expect(draftSchema.parse(JSON.parse(JSON.stringify(draft)))).toEqual(draft)
	})

	test('begins empty, with the season’s dates', () => {
		const dates = { from: day('2026-11-16'), to: day('2026-12-04'), answerBy: day('2026-10-30') }
		expect(emptyDraft(dates)).toEqual({
			v: 1,
			title: '',
			letter: '',
			window: { from: '2026-11-16', to: '2026-12-04' },
			answerBy: '2026-10-30',
			design: 'new',
			takeDown: false,
			containers: [],
			options: [],
			extras: [],
			agreement: { is: 'none' },
			overruled: [],
		})
	})

	test.each<{ name: string; of: unknown }>([
		{ name: 'a field of nobody', of: { ...draft, totalCents: 1 } },
		{ name: 'another version', of: { ...draft, v: 2 } },
		{ name: 'a count below nothing', of: counted(-1) },
		{ name: 'a count past all', of: counted(9999.001) },
		{ name: 'a count of four decimals', of: counted(1.0005) },
		{ name: 'a count of no number', of: counted(Number.NaN) },
		{
			name: 'a count of another way',
			of: extra({ lines: [{ ...typed(1, 'accent', 1), count: { way: 'grown', value: 1 } }] }),
		},
		{ name: 'half a cent', of: option({ supplementCents: 0.5 }) },
		{ name: 'a supplement below nothing', of: option({ supplementCents: -1 }) },
		{ name: 'a supplement past all', of: option({ supplementCents: 10_000_001 }) },
		{ name: 'a key in large letters', of: option({ key: 'A' }) },
		{ name: 'five palettes', of: { ...draft, options: Array.from({ length: 5 }, () => first(draft.options)) } },
		{ name: 'a name that cannot be stored', of: option({ name: 'urn\u0000' }) },
		{ name: 'a name too long', of: option({ name: 'a'.repeat(61) }) },
		{ name: 'a day that is none', of: { ...draft, answerBy: '2026-02-30' } },
		{ name: 'a percentage past all', of: { ...draft, agreement: { is: 'discount', percent: 100.001 } } },
	])('is refused with $name', ({ of }) => {
		expect(draftSchema.safeParse(of).success).toBe(false)
	})

	test('is composed as all text is', () => {
		expect(draftSchema.parse({ ...draft, title: 'cafe\u0301\r\n' }).title).toBe('café\n')
	})
})
