import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import type { Job } from '@/lib/pricing/job'
import { price } from '@/lib/pricing/price'
import type { PriceList } from '@/lib/pricing/price-list'
import type { Choice } from '@/lib/pricing/quote/choice'
import { quote } from '@/lib/pricing/quote/quote'
import { defaultRates } from '@/lib/pricing/rates'
import { chosenJobs, runs } from '../arbitrary'
import { bare, extra, job, line, visit, words } from '../sample'

/**
 * The price before tax never falls when more is taken. Nor does the total, but for one case: what comes takes the
 * place of a minimum's top-up, which is labour, and labour is taxed otherwise than it, or tax is rounded by the line.
 */
function mayTaxFall({ minimumVisitCents, payer, tax: { taxable, labour, basis } }: PriceList): boolean {
	const { plants, goods } = taxable
	const isLabourTaxed = taxable.labour || (labour === 'taxed whole' && (plants || goods))
	if (minimumVisitCents === null || payer.exemptCertificate !== null || !isLabourTaxed) return false
	return basis === 'line' || !(plants && goods)
}

function expectNoLess(list: PriceList, less: Choice, more: Choice) {
	const [before, after] = [quote(list, less), quote(list, more)]
	expect(after.netCents).toBeGreaterThanOrEqual(before.netCents)
	if (!mayTaxFall(list)) expect(after.totalCents).toBeGreaterThanOrEqual(before.totalCents)
}

describe('under every agreement', () => {
	test('adding an extra never costs less', () => {
		fc.assert(
			fc.property(chosenJobs, ({ job: of, choice }) => {
				const { list } = price(of, words)
				for (const { key } of of.extras)
					if (!choice.extras.includes(key)) expectNoLess(list, choice, { ...choice, extras: [...choice.extras, key] })
			}),
			runs,
		)
	})

	test('keeping a container never costs less than leaving it out', () => {
		fc.assert(
			fc.property(chosenJobs, ({ job: of, choice }) => {
				const { list } = price(of, words)
				for (const kept of choice.leftOut)
					expectNoLess(list, choice, { ...choice, leftOut: choice.leftOut.filter((id) => id !== kept) })
			}),
			runs,
		)
	})
})

/** One more piece of a line of a container. */
function withOneMore(of: Job, at: number, which: number): Job | null {
	const grown = of.containers[at % of.containers.length]
	if (grown === undefined || grown.lines.length === 0) return null
	const more = grown.lines.map((each, n) =>
		n === which % grown.lines.length ? { ...each, count: Math.floor(each.count) + 1 } : each,
	)
	return { ...of, containers: of.containers.map((each) => (each === grown ? { ...each, lines: more } : each)) }
}

const grown = fc
	.tuple(chosenJobs, fc.nat(4), fc.nat(3))
	.map(([{ job: of, choice }, at, which]) => ({ of, choice, more: withOneMore(of, at, which) }))

describe('one more piece of a line', () => {
	test('never lowers the price before tax without an agreement, or in a fixed season, whatever the choice', () => {
		fc.assert(
			fc.property(grown, ({ of, choice, more }) => {
				fc.pre(more !== null && of.agreement.is !== 'discount')
				if (more === null) return
				const net = (each: Job) => quote(price(each, words).list, choice).netCents
				expect(net(more)).toBeGreaterThanOrEqual(net(of))
			}),
			runs,
		)
	})

	test('under a discount never lowers the price of all containers and extras before rounding', () => {
		fc.assert(
			fc.property(grown, fc.nat(100_000), ({ of, more }, milli) => {
				fc.pre(more !== null)
				if (more === null) return
				const exact = (each: Job) => {
					const { costs } = price({ ...each, agreement: { is: 'discount', percent: milli / 1000 } }, words)
					return costs.parts.reduce((all, part) => all + part.grossCents - part.discountCents, 0)
				}
				expect(exact(more)).toBeGreaterThanOrEqual(exact(of))
			}),
			runs,
		)
	})

	test('under a discount moves no other container by more than two cents before rounding', () => {
		fc.assert(
			fc.property(grown, fc.nat(100_000), ({ of, more }, milli) => {
				fc.pre(more !== null)
				if (more === null) return
				const book = (each: Job) =>
					price({ ...each, agreement: { is: 'discount', percent: milli / 1000 } }, words).costs.parts
				for (const [n, before] of book(of).entries()) {
					const after = book(more)[n]
					if (before.is !== 'container' || after?.grossCents !== before.grossCents) continue
					expect(Math.abs(after.discountCents - before.discountCents)).toBeLessThanOrEqual(2)
				}
			}),
			{ numRuns: 200 },
		)
	})
})

describe('what the laws cannot promise', () => {
	test('a stake more in one pot moves a cent of discount to the other, which then comes under its step', () => {
		const stakes = (count: number) => [line('stakes', 'mechanics', 'none', count, 10, 1)]
		const of = (count: number) =>
			job({
				agreement: { is: 'discount', percent: 10 },
				containers: [bare(1, { lines: stakes(count) }), bare(2, { openingCm2: 2306, lines: stakes(20) })],
			})
		const pots = (count: number) => price(of(count), words).list.parts.slice(0, 2)
		// 31.15 − 3.12 and 44.45 − 4.44; then 31.30 − 3.13 and 44.45 − 4.45
		expect(pots(1).map((part) => part.cents)).toEqual([3000, 4500])
		expect(pots(2).map((part) => part.cents)).toEqual([3000, 4000])
	})

	test('goods free of tax take the place of a top-up that is taxed: less tax, no less before it', () => {
		const tax = { ...defaultRates.tax, taxable: { plants: false, goods: false, labour: true } }
		const wreath = extra('wreath', { minutes: 0, lines: [line('wreath', 'faux', 'none', 1, 2000, 1)] })
		const { list } = price(
			job({ rates: { ...defaultRates, tax }, visits: [visit(1)], containers: [bare(1)], extras: [wreath] }),
			words,
		)
		const [before, after] = [[], ['wreath']].map((extras) => quote(list, { leftOut: [], extras }))
		expect(mayTaxFall(list)).toBe(true)
		expect([after?.netCents, before?.netCents]).toEqual([17_500, 17_500])
		// 6 % of 175.00, then of 133.00
		expect([after?.totalCents, before?.totalCents]).toEqual([18_298, 18_550])
	})
})
