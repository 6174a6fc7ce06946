import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { boughtFor, shareOfPack } from '@/lib/pricing/cost/bought'
import { price } from '@/lib/pricing/price'
import { defaultRates } from '@/lib/pricing/rates'
import { sum } from '@/lib/units/cents'
import { runs } from '../arbitrary'
import { container, extra, job, line, words } from '../sample'

const garland = (count: number) => line('magnolia garland', 'fresh', 'green', count, 2790, 3, { onlyHere: true })

const costs = (made: ReturnType<typeof job>) =>
	price(made, words).costs.parts.flatMap((part) => part.lines.map(({ costCents, cost }) => ({ costCents, cost })))

describe('what nobody else uses is bought in whole packs', () => {
	test('once for two containers of a client: 2 and 3 pieces with 10 % loss are two packs of three', () => {
		const two = job({ containers: [container(1, { lines: [garland(2)] }), container(2, { lines: [garland(3)] })] })
		expect(costs(two)).toEqual([
			{ costCents: 2232, cost: 'nobody else uses it: its share of 2 × $27.90' },
			{ costCents: 3348, cost: 'nobody else uses it: its share of 2 × $27.90' },
		])
	})

	test('for an extra apart, since it may not be chosen', () => {
		const made = job({
			containers: [container(1, { lines: [garland(2)] })],
			extras: [extra('x', { lines: [garland(1)] })],
		})
		expect(costs(made).map(({ costCents }) => costCents)).toEqual([2790, 2790])
	})

	test('another pack or another kind is another purchase', () => {
		const other = line('magnolia garland', 'fresh', 'green', 1, 3100, 4, { onlyHere: true })
		const made = job({ containers: [container(1, { lines: [garland(1), other] })] })
		expect(costs(made).map(({ costCents }) => costCents)).toEqual([2790, 3100])
	})

	test('the client’s own is not bought', () => {
		const own = { ...garland(5), holding: 'own' as const }
		const made = job({ containers: [container(1, { lines: [garland(1), own] })] })
		expect(costs(made).map(({ costCents }) => costCents)).toEqual([2790, 0])
	})
})

test('the shares sum to whole packs, never below what the lines take, never a pack too many', () => {
	const counts = fc.array(fc.integer({ min: 0, max: 4000 }), { minLength: 1, maxLength: 6 })
	fc.assert(
		fc.property(counts, (thousandths) => {
			const lines = thousandths.map((count) => garland(count / 1000))
			const made = job({ containers: lines.map((each, n) => container(n + 1, { lines: [each] })) })
			const bought = boughtFor(made, [])
			const whole = sum(lines.map((each) => bought.get(each)?.cents ?? sum([])))
			const share = lines.reduce((total, each) => total + shareOfPack(each, defaultRates), 0)
			expect(whole % 2790).toBe(0)
			expect(whole).toBeGreaterThanOrEqual(share - lines.length)
			expect(whole - share).toBeLessThan(2790 + lines.length)
		}),
		runs,
	)
})
