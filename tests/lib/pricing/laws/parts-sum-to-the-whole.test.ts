import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { price } from '@/lib/pricing/price'
import type { Part } from '@/lib/pricing/price-list'
import { costing } from '@/lib/pricing/quote/costing'
import { quote } from '@/lib/pricing/quote/quote'
import { sum } from '@/lib/units/cents'
import { chosenJobs, jobs, runs } from '../arbitrary'
import { words } from '../sample'

const amounts = (parts: readonly { readonly cents: Part['cents'] }[]) => sum(parts.map((part) => part.cents))

describe('the parts sum to the whole', () => {
	test('classes of tax to their part, lines and tax to the total, what is due to the total', () => {
		fc.assert(
			fc.property(chosenJobs, ({ job, choice }) => {
				const { lines, tax, netCents, totalCents, due } = quote(price(job, words).list, choice)
				for (const { split, cents: amount } of lines) {
					expect(sum([split.plants, split.goods, split.labour])).toBe(amount)
					expect(Math.min(split.plants, split.goods, split.labour)).toBeGreaterThanOrEqual(0)
				}
				expect(amounts(lines)).toBe(netCents)
				expect(netCents + amounts(tax)).toBe(totalCents)
				expect(amounts(due)).toBe(totalCents)
			}),
			runs,
		)
	})

	test('a costing: parts to cost, and each part from its lines, labour and what is paid beside them', () => {
		fc.assert(
			fc.property(chosenJobs, ({ job, choice }) => {
				const { list, costs } = price(job, words, choice.leftOut)
				const { parts, costCents, materialCents, labourCents, netCents } = costing(list, costs, choice)
				expect(sum(parts.map((part) => part.costCents))).toBe(costCents)
				expect(materialCents + labourCents).toBe(costCents)
				expect(netCents).toBe(quote(list, choice).netCents)
				for (const part of parts) {
					const lines = sum(part.lines.map((line) => line.costCents))
					expect(lines + part.labourCostCents + part.otherCostCents).toBe(part.costCents)
				}
			}),
			runs,
		)
	})
})

test('a listed container is a multiple of the step, and less than one step above its exact amount', () => {
	fc.assert(
		fc.property(jobs, (job) => {
			const { list, costs } = price(job, words)
			const step = job.rates.presentationStepCents
			for (const part of list.parts) {
				if (part.is !== 'container') continue
				const working = costs.parts.find((each) => each.is === 'container' && each.container === part.container)
				const exact = (working?.grossCents ?? Number.NaN) - (working?.discountCents ?? Number.NaN)
				expect(part.cents % step).toBe(0)
				expect(part.cents).toBeGreaterThanOrEqual(exact)
				expect(part.cents - exact).toBeLessThan(step)
			}
		}),
		runs,
	)
})
