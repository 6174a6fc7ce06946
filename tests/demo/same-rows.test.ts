import { describe, expect, test } from 'vitest'
import { canaryPrefix } from '@/demo/cast/canary'
import { type Day, day } from '@/lib/units/day'
import { played, rowsIn } from './stage'

async function rowsOf(today: Day, canary = false) {
	const { folder, end } = await played(today, canary)
	try {
		return rowsIn(folder)
	} finally {
		end()
	}
}

const today = day('2026-10-06')

describe('the same day gives the same rows', () => {
	test('byte for byte, the hashes of the revisions among them; another day gives others', async () => {
		const [first, again, other] = [await rowsOf(today), await rowsOf(today), await rowsOf(day('2026-10-07'))]
		expect(first.revision).toHaveLength(29)
		expect(again.revision).toEqual(first.revision)
		expect(again).toEqual(first)
		expect(other.revision).not.toEqual(first.revision)
	})
})

describe('canaries stand in for what only the studio may read', () => {
	test('in suppliers, clients and recipes, and nowhere else', async () => {
		const [plain, sung] = [await rowsOf(today), await rowsOf(today, true)]
		const differs = Object.keys(plain).filter((table) => JSON.stringify(plain[table]) !== JSON.stringify(sung[table]))
		expect(differs.toSorted()).toEqual(['client', 'recipe', 'supplier', 'visit'])
		const songs = (table: string) => (sung[table] ?? []).map((row) => row.split(canaryPrefix).length - 1)
		expect(new Set(songs('client'))).toEqual(new Set([1]))
		expect(new Set(songs('recipe'))).toEqual(new Set([1]))
		expect(new Set(songs('supplier'))).toEqual(new Set([2]))
		expect(JSON.stringify(plain)).not.toContain(canaryPrefix)
	})
})

describe('the play can be given on any day', () => {
	test.each([
		['in the midst of winter', '2026-01-15', 2025],
		['at the end of May, still the winter before', '2026-05-31', 2025],
		['on the first day of June', '2026-06-01', 2026],
		['on the day after a leap day', '2028-03-01', 2027],
		['when the clocks go back', '2026-11-01', 2026],
		['on the last day of the year', '2026-12-31', 2026],
	])('%s', async (_when, on, year) => {
		const { season = [] } = await rowsOf(day(on))
		expect(season.map((row) => JSON.parse(row).slice(1, 3)).toSorted()).toEqual([
			['autumn', year],
			['winter', year],
		])
	})
})
