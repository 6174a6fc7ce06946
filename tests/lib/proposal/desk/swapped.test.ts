import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import type { DraftText } from '@/lib/forms/draft-form'
import type { StandIn } from '@/lib/proposal/desk/stand-in'
import { swapped } from '@/lib/proposal/desk/swapped'
import { hex } from '@/lib/units/hex'
import { materialId } from '../sample'

type Line = DraftText['extras'][number]['lines'][number]

const [birch, willow, stakes, fir] = [materialId(1), materialId(2), materialId(3), materialId(4)]
const line = (material: string, count: string, more: Partial<Line> = {}): Line => ({
	...{ material, role: 'thriller', holding: 'sold', count, grows: null, isKept: false },
	...more,
})
const standIn = (more: Partial<StandIn> = {}): StandIn => ({
	...{ id: willow, name: 'willow', hex: hex('#8f2c2f'), role: 'thriller', kind: 'fresh', unit: 'stem' },
	...{ why: 'as tall', perUnit: 1 },
	...more,
})
const held = line(stakes, '6', { role: 'mechanics', grows: { way: 'held', count: 0.5, holds: birch } })

describe('one material replaced by another', () => {
	test('every line of it, with its count as it was typed; the others stay', () => {
		const lines = [line(birch, '12'), line(fir, '9'), line(birch, ' 3.0 ')]
		expect(swapped(lines, birch, standIn())).toEqual([line(willow, '12'), lines[1], line(willow, ' 3.0 ')])
	})

	test('what is kept stays kept, grows as it grew, and what held the one holds the other', () => {
		const kept = line(birch, '13', { isKept: true, grows: { way: 'stems', count: 12 } })
		expect(swapped([kept, held], birch, standIn())).toEqual([
			{ ...kept, material: willow },
			{ ...held, grows: { way: 'held', count: 0.5, holds: willow } },
		])
	})

	test.each([
		['lent', 'ornament', 'lent'],
		['lent', 'fresh', 'sold'],
		['sold', 'ornament', 'sold'],
		['own', 'ornament', 'lent'],
		['own', 'fresh', 'sold'],
	] as const)('%s, replaced by %s: %s', (holding, kind, wanted) => {
		expect(swapped([line(birch, '4', { holding })], birch, standIn({ kind }))[0]?.holding).toBe(wanted)
	})

	test('counted differently, as many pieces stand: 12 stems are 0.545 kg at 22 a kg, and back', () => {
		const toKg = standIn({ unit: 'kg', perUnit: 1 / 22 })
		const grown = line(birch, '12', { grows: { way: 'greens', count: 11 } })
		expect(swapped([grown], birch, toKg)[0]).toMatchObject({ count: '0.545', grows: { count: 0.5 } })
		expect(swapped([line(birch, '0.5')], birch, standIn({ perUnit: 22 }))[0]?.count).toBe('11')
		expect(swapped([line(birch, '')], birch, toKg)[0]?.count).toBe('')
		expect(swapped([line(birch, '0.01')], birch, standIn({ perUnit: 22 }))[0]?.count).toBe('1')
	})

	test('a share of the opening is nobody’s unit', () => {
		const plant = line(birch, '5', { grows: { way: 'spacing', share: 0.4 } })
		expect(swapped([plant], birch, standIn({ perUnit: 3 }))[0]?.grows).toEqual({ way: 'spacing', share: 0.4 })
	})

	test('law: there and back is where one began, where both are counted alike', () => {
		const lines = fc.array(
			fc
				.record({ material: fc.constantFrom(birch, fir), count: fc.nat(99).map(String) })
				.map((each) => line(each.material, each.count)),
			{ maxLength: 6 },
		)
		fc.assert(
			fc.property(lines, (some) => {
				const there = swapped([...some, held], birch, standIn())
				expect(there.some(({ material }) => material === birch)).toBe(false)
				expect(swapped(there, willow, standIn({ id: birch }))).toEqual([...some, held])
			}),
		)
	})
})
