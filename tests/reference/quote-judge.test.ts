import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import type { CostBook } from '@/lib/pricing/cost-book'
import type { Job } from '@/lib/pricing/job'
import { price } from '@/lib/pricing/price'
import type { PriceList } from '@/lib/pricing/price-list'
import type { Choice } from '@/lib/pricing/quote/choice'
import { costing } from '@/lib/pricing/quote/costing'
import type { Due } from '@/lib/pricing/quote/due'
import { mixedJob } from '@/lib/pricing/quote/mixed-job'
import { mixedList } from '@/lib/pricing/quote/mixed-list'
import { type QuoteLine, quote } from '@/lib/pricing/quote/quote'
import { cents } from '@/lib/units/cents'
import { chosenJobs } from '../lib/pricing/arbitrary'
import { mixedJobs, takenAt } from '../lib/pricing/mixed-jobs'
import { bare, container, containerId, extra, job, line, placeId, visit, words } from '../lib/pricing/sample'
import { judge, judgeMixed, type Verdict } from './quote-judge/judge'

// Judge: fraction.js, exact rationals. The judge works from the words of the trade and imports nothing of the code
// but the shape of a job. Beyond those words it follows what the code declares: minutes, pieces and litres are kept to
// a thousandth; of equal remainders the earlier id comes first; containers and extras bear the discount each as a
// group; an amount is split over classes of tax in the proportions of its working.

function nameOf(of: QuoteLine): string {
	if ('container' in of) return `${of.is} ${of.container}`
	if ('extra' in of) return `extra ${of.extra}`
	if (of.is === 'design') return 'design'
	return `${of.is === 'minimum visit' ? 'minimum' : of.is} ${of.place}`
}

const when = ({ when: at }: Due) => (at.is === 'after install' ? `after install ${at.days}` : at.is)
const some = (items: readonly (readonly [string, number])[]) =>
	Object.fromEntries(items.filter(([, amount]) => amount !== 0))

function ours(of: Job, choice: Choice): Verdict {
	const { list, costs } = price(of, words, choice.leftOut)
	return said(list, costs, choice)
}

function said(list: PriceList, costs: CostBook, choice: Choice): Verdict {
	const { lines, tax, netCents, totalCents, due } = quote(list, choice)
	const { minutes, materialCents, labourCents, costCents, marginPercent, shortfallCents } = costing(list, costs, choice)
	return {
		lines: some(lines.map((each) => [nameOf(each), each.cents])),
		tax: some(tax.map((each) => [`${each.bill} ${each.milliPercent}`, each.cents])),
		...{ netCents, totalCents, due: due.map((each) => [each.cents, when(each)]) },
		...{ minutes, materialCents, labourCents, costCents, marginPercent, shortfallCents },
	}
}

describe('a quote and its costing, judged in exact fractions', () => {
	const lines = [
		line('birch', 'fresh', 'branch', 14, 1840, 10, { onlyHere: true }),
		line('cedar', 'fresh', 'green', 0.85, 990, 1, { unit: 'kg', piecesPerUnit: 45 }),
		line('globes', 'ornament', 'cluster to make', 3, 5400, 6, { holding: 'lent' }),
	]
	const two = job({
		visits: [visit(1), visit(2, { taxMilliPercent: 7250, driveMinutes: 14 })],
		containers: [container(1, { lines }), bare(2, { place: placeId(2), isNew: true, soilL: 41.5 })],
		extras: [extra('wreath', { minutes: 9.5 }), extra('garland', { place: placeId(2), minutes: 41 })],
	})
	const home = { kind: 'household', netDays: 15, exemptCertificate: null } as const
	test.each<{ name: string; of: Job; choice: Choice }>([
		{ name: 'two doors, a wreath', of: two, choice: { leftOut: [], extras: ['wreath'] } },
		{
			name: 'a household',
			of: { ...two, payer: home, quarter: 'spring' },
			choice: { leftOut: [containerId(2)], extras: [] },
		},
		{
			name: 'a discount after summer',
			of: { ...two, quarter: 'autumn', agreement: { is: 'discount', percent: 7.5 } },
			choice: { leftOut: [], extras: ['garland', 'wreath'] },
		},
		{
			name: 'a fixed season',
			of: {
				...{ ...two, supplementCents: cents(4150) },
				agreement: { is: 'fixed', cents: cents(61_900), containers: [containerId(1)] },
			},
			choice: { leftOut: [], extras: ['garland'] },
		},
	])('$name', ({ of, choice }) => {
		expect(ours(of, choice)).toEqual(judge(of, choice))
	})

	test('any job, any choice, cent by cent', () => {
		fc.assert(
			fc.property(chosenJobs, ({ job: of, choice }) => {
				expect(ours(of, choice)).toEqual(judge(of, choice))
			}),
			{ numRuns: 500 },
		)
	})

	test('any options, each place with one of them, any choice, cent by cent', () => {
		fc.assert(
			fc.property(mixedJobs, ({ jobs, at, choice }) => {
				const [main] = jobs
				if (main === undefined) return
				const lists = jobs.map((job) => price(job, words).list)
				const [list] = lists
				if (list === undefined) return
				const job = mixedJob(main, takenAt(jobs, at))
				const { costs } = price({ ...job, rates: main.rates }, words, choice.leftOut)
				const verdict = judgeMixed(jobs, (place) => [...at].find(([id]) => id === place)?.[1] ?? 0, choice)
				expect(said(mixedList(list, takenAt(lists, at)), costs, choice)).toEqual(verdict)
			}),
			{ numRuns: 150 },
		)
	})
})
