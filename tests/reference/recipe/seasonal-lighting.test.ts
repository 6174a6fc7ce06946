import { describe, expect, test } from 'vitest'
import { lights as check, mostWatts } from '@/lib/recipe/check/lights'
import { usualCircuit } from '@/lib/recipe/check/setting'
import { where } from '../../lib/recipe/check/sample'
import { lights, put } from '../../lib/recipe/sample'

const keys = (count: number, watts: number, more = {}) =>
	check([put(lights(1, 'lights', { watts, mostEndToEnd: null }), count)], where(more)).map(({ key }) => key)

// A load of three hours or more may take 80 % of its breaker (NEC 210.19(A) and 210.20(A); section numbers from memory, the
// rule as manhattanreefs.com and formulafactory.tools state it): 15 A × 120 V = 1800 W, of which 1440 W, 12 A; 20 A: 1920 W.
describe('the 80 % rule', () => {
	test.each([
		{ amps: 15, whole: 1800, most: 1440, most_A: 12 },
		{ amps: 20, whole: 2400, most: 1920, most_A: 16 },
	])('$amps A at 120 V: $most W of $whole W', ({ amps, whole, most, most_A }) => {
		const circuit = { volts: 120, amps, otherWatts: 0 }
		expect(amps * 120).toBe(whole)
		expect(mostWatts(circuit)).toBe(most)
		expect(mostWatts(circuit) / 120).toBe(most_A)
		// the same rule from its other end: the load × 1.25 is not over the breaker
		expect(mostWatts(circuit) * 1.25).toBe(whole)
	})

	// 411answers.com: on 15 A, 14 lamps of 100 W are safe, or 22 of 65 W.
	test.each([
		{ watts: 100, safe: 14 },
		{ watts: 65, safe: 22 },
	])('worked example: $safe lamps of $watts W', ({ watts, safe }) => {
		expect(keys(safe, watts)).toEqual([])
		expect(keys(safe + 1, watts)).toEqual(['circuit/look again'])
	})

	// A string of 100 small lamps measured at 0.3 A (electrical-contractor.net): 36 W, so 40 strings are just the most.
	test('worked example: strings of 0.3 A', () => {
		const watts = 0.3 * usualCircuit.volts
		expect(keys(40, watts)).toEqual([])
		expect(keys(41, watts)).toEqual(['circuit/look again'])
		expect(keys(40, watts, { circuit: { ...usualCircuit, otherWatts: 1 } })).toEqual(['circuit/look again'])
	})
})

// NEC 590.3(B): decorative holiday lighting is temporary wiring, for 90 days (NECA-NEIS code question, 15 January 2019; NFPA,
// 2023 NEC). Winter from 20 November to the end of February is 101 days.
describe('ninety days', () => {
	const days = (from: string, to: string) => (Date.parse(to) - Date.parse(from)) / 86_400_000
	test.each([
		{ from: '2026-11-20', to: '2027-03-01', hung: 101, told: ['days hung/look again'] },
		{ from: '2026-11-27', to: '2027-02-25', hung: 90, told: [] },
		{ from: '2026-11-27', to: '2027-02-26', hung: 91, told: ['days hung/look again'] },
	])('from $from to $to: $hung', ({ from, to, hung, told }) => {
		expect(days(from, to)).toBe(hung)
		expect(keys(2, 20, { daysHung: hung })).toEqual(told)
	})
})
