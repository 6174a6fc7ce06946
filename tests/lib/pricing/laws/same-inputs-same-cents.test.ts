import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { price } from '@/lib/pricing/price'
import type { PriceList } from '@/lib/pricing/price-list'
import { costing } from '@/lib/pricing/quote/costing'
import { quote } from '@/lib/pricing/quote/quote'
import { chosenJobs, reordered, runs } from '../arbitrary'
import { words } from '../sample'

describe('the same inputs, the same cents', () => {
	test('whatever the order in which lines, containers, visits and extras were written down', () => {
		const pairs = chosenJobs.chain(({ job, choice }) => fc.tuple(fc.constant(job), reordered(job), fc.constant(choice)))
		fc.assert(
			fc.property(pairs, ([job, other, choice]) => {
				const [a, b] = [price(job, words, choice.leftOut), price(other, words, choice.leftOut)]
				expect(b.list).toEqual(a.list)
				expect(quote(b.list, choice)).toEqual(quote(a.list, choice))
				const figures = ({ list, costs }: typeof a) => ({ ...costing(list, costs, choice), parts: [] })
				expect(figures(b)).toEqual(figures(a))
			}),
			runs,
		)
	})

	test('from a price list that was stored as JSON and read back', () => {
		fc.assert(
			fc.property(chosenJobs, ({ job, choice }) => {
				const { list } = price(job, words)
				const stored: PriceList = JSON.parse(JSON.stringify(list))
				expect(quote(stored, choice)).toEqual(quote(list, choice))
			}),
			runs,
		)
	})

	test('a choice moves no price but its own', () => {
		fc.assert(
			fc.property(chosenJobs, ({ job, choice }) => {
				const { list } = price(job, words)
				const kept = quote(list, choice).lines.filter(({ is }) => is !== 'minimum visit')
				for (const line of kept) expect(list.parts).toContainEqual(line)
			}),
			runs,
		)
	})
})
