import { describe, expect, test } from 'vitest'
import { type InstallPot, samePots } from '@/lib/proposal/desk/install-pots'
import type { OfferLine } from '@/lib/proposal/offer/offer'
import { hex } from '@/lib/units/hex'

const fir = (count: number): OfferLine[] => [
	{ role: 'filler', name: 'noble fir', hex: hex('#4b6b3e'), unit: 'stem', count, holding: 'sold', hazards: [] },
]
const pot = (name: string, count: number, words = 'round, 18 in across'): InstallPot => ({
	name,
	words,
	lines: fir(count),
})

describe('pots as hands fill them', () => {
	test('those of one size that hold the same are told once, where the first of them stands', () => {
		expect(samePots([pot('Left', 12), pot('Box', 5), pot('Right', 12)])).toEqual([
			{ names: ['Left', 'Right'], words: 'round, 18 in across', lines: fir(12) },
			{ names: ['Box'], words: 'round, 18 in across', lines: fir(5) },
		])
	})

	test('another count or another size is another pot', () => {
		expect(samePots([pot('Left', 12), pot('Right', 13), pot('Step', 12, 'urn, 16 in across')])).toHaveLength(3)
	})
})
