import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { allocate } from '@/lib/pricing/allocate'
import { cents, sum } from '@/lib/units/cents'

describe('allocate', () => {
	test.each([
		{ name: 'a third each, the odd cent to the first', total: 100, weights: [1, 1, 1], shares: [34, 33, 33] },
		{ name: 'the largest remainder takes the odd cent', total: 101, weights: [1, 3, 6], shares: [10, 30, 61] },
		{ name: 'half and half, the odd cent to the deposit', total: 24_999, weights: [1, 1], shares: [12_500, 12_499] },
		{ name: 'a weight of nothing bears nothing', total: 77, weights: [0, 5, 2], shares: [0, 55, 22] },
		{ name: 'no weight at all: the first bears it', total: 45, weights: [0, 0], shares: [45, 0] },
		{ name: 'nothing to split', total: 0, weights: [3, 8], shares: [0, 0] },
		{ name: 'a refund, as the charge was split', total: -100, weights: [1, 1, 1], shares: [-34, -33, -33] },
		{ name: 'a cent over many', total: 1, weights: [2, 9, 4], shares: [0, 1, 0] },
	])('$name', ({ total, weights, shares }) => {
		expect(allocate(cents(total), weights)).toEqual(shares)
	})

	test.each([
		{ name: 'nothing to split over', weights: [], says: 'there is nothing to split over' },
		{ name: 'a negative weight', weights: [4, -1], says: '-1 is no weight' },
		{ name: 'a broken weight', weights: [0.5, 2], says: '0.5 is no weight' },
	])('refuses $name', ({ weights, says }) => {
		expect(() => allocate(cents(10), weights)).toThrow(says)
	})
})

const amount = fc.integer({ min: -10_000_000, max: 10_000_000 }).map(cents)
const weights = fc.array(fc.integer({ min: 0, max: 1_000_000 }), { minLength: 1, maxLength: 12 })

describe('laws of allocate', () => {
	test('the shares sum to the whole', () => {
		fc.assert(
			fc.property(amount, weights, (total, of) => sum(allocate(total, of)) === total),
			{ numRuns: 1000 },
		)
	})

	test('each share is its quota, rounded down or up (quota rule)', () => {
		fc.assert(
			fc.property(amount, weights, (total, of) => {
				const whole = of.reduce((all, weight) => all + BigInt(weight), 0n)
				fc.pre(whole > 0n)
				for (const [index, share] of allocate(total, of).entries()) {
					const off = BigInt(share) * whole - BigInt(total) * BigInt(of[index] ?? 0)
					expect(off < whole && off > -whole).toBe(true)
				}
			}),
			{ numRuns: 1000 },
		)
	})

	test('more weight never bears less', () => {
		fc.assert(
			fc.property(amount, weights, (total, of) => {
				const shares = allocate(cents(Math.abs(total)), of)
				const byWeight = of.map((weight, index) => ({ weight, share: shares[index] ?? 0 }))
				for (const a of byWeight)
					for (const b of byWeight) if (a.weight > b.weight) expect(a.share).toBeGreaterThanOrEqual(b.share)
			}),
			{ numRuns: 300 },
		)
	})

	test('weights written larger by the same factor split alike', () => {
		fc.assert(
			fc.property(amount, weights, fc.integer({ min: 2, max: 999 }), (total, of, factor) => {
				fc.pre(of.some((weight) => weight > 0))
				expect(
					allocate(
						total,
						of.map((weight) => weight * factor),
					),
				).toEqual(allocate(total, of))
			}),
		)
	})
})
