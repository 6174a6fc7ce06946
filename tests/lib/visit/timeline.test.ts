import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { addDays, day } from '@/lib/units/day'
import { timeline } from '@/lib/visit/timeline'

const autumn = { quarter: 'autumn', year: 2026, from: day('2026-09-12') } as const
const winter = { quarter: 'winter', year: 2026, from: day('2026-11-16') } as const
const visit = (id: string, season: typeof autumn | typeof winter, place: string | null, on: string) => ({
	...{ id, season, place, on: day(on) },
})

describe('a client’s history', () => {
	const door = visit('a', autumn, 'Front door', '2026-09-14')
	const later = visit('b', autumn, 'Front door', '2026-09-28')
	const court = visit('c', autumn, 'Court', '2026-09-21')
	const all = visit('d', winter, null, '2026-11-20')
	const design = { season: autumn, name: 'Wheat' }

	test('goes by season and place, the newest first, each season with its design', () => {
		expect(timeline([door, all, court, later], [design])).toEqual([
			{ season: winter, design: null, places: [{ place: null, visits: [all] }] },
			{
				season: autumn,
				design,
				places: [
					{ place: 'Front door', visits: [later, door] },
					{ place: 'Court', visits: [court] },
				],
			},
		])
	})

	test('has a chapter for a design that nobody wrote a visit down for', () => {
		expect(timeline([], [design])).toEqual([{ season: autumn, design, places: [] }])
	})

	test('is empty of nothing', () => {
		expect(timeline([], [])).toEqual([])
	})

	const any = fc.record({
		id: fc.uuid(),
		season: fc.constantFrom(autumn, winter),
		place: fc.constantFrom('Front door', 'Court', null),
		on: fc.integer({ min: 0, max: 200 }).map((days) => addDays(day('2026-09-01'), days)),
	})
	const shownIn = (visits: Parameters<typeof timeline<typeof door, never>>[0]) =>
		timeline(visits, []).flatMap(({ places }) => places.flatMap((place) => place.visits))

	test('loses no visit and shows none twice, in the same order however they come', () => {
		fc.assert(
			fc.property(fc.uniqueArray(any, { selector: ({ id }) => id }), (visits) => {
				const ids = shownIn(visits).map(({ id }) => id)
				expect(ids.toSorted()).toEqual(visits.map(({ id }) => id).toSorted())
				expect(shownIn(visits.toReversed()).map(({ id }) => id)).toEqual(ids)
			}),
		)
	})
})
