import { describe, expect, test } from 'vitest'
import { enoughToSpare, zoneFromF, zoneName, zonesToSpare } from '@/lib/recipe/almanac/zone'
import { hardiness } from '@/lib/recipe/check/plants/hardiness'
import { where } from '../../lib/recipe/check/sample'
import { plant, put } from '../../lib/recipe/sample'

// USDA Plant Hardiness Zone Map: average annual extreme minimum, °F, 5 °F a half zone (planthardiness.ars.usda.gov, "How to
// use the maps"; rows as en.permawiki.org and worldofsucculents.com have them, which agree on all 26).
const table = [
	['1a', -60, -55, -51.1],
	['1b', -55, -50, -48.3],
	['2a', -50, -45, -45.6],
	['2b', -45, -40, -42.8],
	['3a', -40, -35, -40],
	['3b', -35, -30, -37.2],
	['4a', -30, -25, -34.4],
	['4b', -25, -20, -31.7],
	['5a', -20, -15, -28.9],
	['5b', -15, -10, -26.1],
	['6a', -10, -5, -23.3],
	['6b', -5, 0, -20.6],
	['7a', 0, 5, -17.8],
	['7b', 5, 10, -15],
	['8a', 10, 15, -12.2],
	['8b', 15, 20, -9.4],
	['9a', 20, 25, -6.7],
	['9b', 25, 30, -3.9],
	['10a', 30, 35, -1.1],
	['10b', 35, 40, 1.7],
	['11a', 40, 45, 4.4],
	['11b', 45, 50, 7.2],
	['12a', 50, 55, 10],
	['12b', 55, 60, 12.8],
	['13a', 60, 65, 15.6],
	['13b', 65, 70, 18.3],
] as const

describe('the zones', () => {
	test.each(table.map(([name, fromF, toF, fromC], n) => ({ name, fromF, toF, fromC, zone: 1 + n / 2 })))(
		'$name from $fromF °F',
		({ name, fromF, toF, fromC, zone }) => {
			expect(zoneName(zone)).toBe(name)
			expect(zoneFromF(zone)).toBe(fromF)
			expect(zoneFromF(zone + 0.5)).toBe(toF)
			expect(((zoneFromF(zone) - 32) * 5) / 9).toBeCloseTo(fromC, 1)
		},
	)
})

// Brooklyn Botanic Garden, "Overwintering potted plants": in zone 7 choose plants hardy to zone 5. Great Garden Plants:
// in zone 6, to zone 4. Dummies, Container Gardening, 2nd edition: add roughly two zones.
describe('plants that winter in pots', () => {
	const heath = (zone: number) => [put(plant(1, 'heath', { zone }), 3)]
	test.each([
		{ name: 'zone 7, the garden’s example', place: 7, plantZone: 5 },
		{ name: 'zone 6, the nursery’s', place: 6, plantZone: 4 },
	])('$name: hardy to $plantZone', ({ place, plantZone }) => {
		expect(zonesToSpare(plantZone, place)).toBe(enoughToSpare)
		expect(hardiness(heath(plantZone), where({ zone: place }))).toEqual([])
		expect(hardiness(heath(plantZone + 0.5), where({ zone: place }))).toHaveLength(1)
	})
})
