import { describe, expect, test } from 'vitest'
import { allocate } from '@/lib/pricing/allocate'
import { cents, sum } from '@/lib/units/cents'

// Hamilton's method, the House of 1790 as if of 60 seats: populations of the states and the published apportionment,
// electowiki.org. The lower quotas sum to 52; eight states take a seat more.
const house = [
	{ state: 'Virginia', people: 630_560, seats: 11 },
	{ state: 'Massachusetts', people: 475_327, seats: 8 },
	{ state: 'Pennsylvania', people: 432_879, seats: 7 },
	{ state: 'North Carolina', people: 353_523, seats: 6 },
	{ state: 'New York', people: 331_589, seats: 6 },
	{ state: 'Maryland', people: 278_514, seats: 5 },
	{ state: 'Connecticut', people: 236_841, seats: 4 },
	{ state: 'South Carolina', people: 206_236, seats: 3 },
	{ state: 'New Jersey', people: 179_570, seats: 3 },
	{ state: 'New Hampshire', people: 141_822, seats: 2 },
	{ state: 'Vermont', people: 85_533, seats: 1 },
	{ state: 'Georgia', people: 70_835, seats: 1 },
	{ state: 'Kentucky', people: 68_705, seats: 1 },
	{ state: 'Rhode Island', people: 68_446, seats: 1 },
	{ state: 'Delaware', people: 55_540, seats: 1 },
]
const raised = [
	'New Jersey',
	'Connecticut',
	'Delaware',
	'Massachusetts',
	'North Carolina',
	'Maryland',
	'New York',
	'Virginia',
]

describe('the House of 1790', () => {
	const people = house.map((state) => state.people)
	const whole = people.reduce((all, each) => all + each, 0)

	test('the published populations sum to the published whole', () => {
		expect(whole).toBe(3_615_920)
	})

	test('60 seats as published', () => {
		expect(allocate(cents(60), people)).toEqual(house.map(({ seats }) => seats))
	})

	test('the states that take a seat above their lower quota as published', () => {
		const seats = allocate(cents(60), people)
		const above = house.filter(({ people: each }, n) => (seats[n] ?? 0) > Math.floor((60 * each) / whole))
		expect(above.map(({ state }) => state).toSorted()).toEqual(raised.toSorted())
	})

	test('whatever the order of the states', () => {
		const turned = house.toReversed()
		const seats = allocate(
			cents(60),
			turned.map((state) => state.people),
		)
		expect(seats).toEqual(turned.map((state) => state.seats))
	})
})

test('five districts and 42 seats, a published exercise and its answer', () => {
	// Quotas 6.088, 4.560, 11.313, 9.859 and 10.180.
	expect(allocate(cents(42), [247_000, 185_000, 459_000, 400_000, 413_000])).toEqual([6, 5, 11, 10, 10])
})

// Worked by hand from the method; ties go to the earlier part, which the method leaves open.
describe('instalments', () => {
	test.each([
		{ name: 'three alike', total: 100_000, weights: [1, 1, 1], parts: [33_334, 33_333, 33_333] },
		{ name: 'half and two quarters', total: 9999, weights: [50, 25, 25], parts: [4999, 2500, 2500] },
		{ name: 'two fifths and the rest', total: 100_001, weights: [40, 30, 30], parts: [40_001, 30_000, 30_000] },
		{
			name: 'seven alike',
			total: 76_543,
			weights: [1, 1, 1, 1, 1, 1, 1],
			parts: [10_935, 10_935, 10_935, 10_935, 10_935, 10_934, 10_934],
		},
	])('$name', ({ total, weights, parts }) => {
		expect(sum(parts.map(cents))).toBe(total)
		expect(allocate(cents(total), weights)).toEqual(parts)
	})
})
