import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { price } from '@/lib/pricing/price'
import type { PriceList } from '@/lib/pricing/price-list'
import { mixedList } from '@/lib/pricing/quote/mixed-list'
import { type Quote, quote } from '@/lib/pricing/quote/quote'
import { type Cents, sum } from '@/lib/units/cents'
import type { PlaceId } from '@/lib/units/id'
import { type Mixed, mixedJobs, takenAt } from '../mixed-jobs'
import { words } from '../sample'

const runs = { numRuns: 120 }

const listsOf = ({ jobs }: Mixed) => jobs.map((job) => price(job, words).list)

function listOf(of: Mixed, lists: readonly PriceList[]): PriceList {
	const [main] = lists
	if (main === undefined) throw new Error('listOf: there is none')
	return mixedList(main, takenAt(lists, of.at))
}

/** What is asked at one place, before tax, but for the fixed price, which is one for all places. */
const netAt = ({ lines }: Quote, place: PlaceId): Cents =>
	sum(lines.filter((line) => line.place === place && line.is !== 'season').map((line) => line.cents))

const inAnyOrder = (of: Quote) => ({ ...of, lines: new Set(of.lines) })

const seasonOf = ({ lines }: Quote): Cents => sum(lines.filter(({ is }) => is === 'season').map((line) => line.cents))

describe('where each place takes its own option', () => {
	test('all the same is that option’s quote to the cent, whichever list is read first', () => {
		fc.assert(
			fc.property(mixedJobs, fc.nat(2), (of, which) => {
				const lists = listsOf(of)
				const same = lists[which % lists.length] ?? expect.fail('there is one')
				for (const main of lists)
					expect(
						inAnyOrder(
							quote(
								mixedList(main, () => same),
								of.choice,
							),
						),
					).toEqual(inAnyOrder(quote(same, of.choice)))
			}),
			runs,
		)
	})

	test('a place costs what it costs with its option, whatever the others take; the fixed price stays one', () => {
		fc.assert(
			fc.property(mixedJobs, (of) => {
				const lists = listsOf(of)
				const whole = lists.map((list) => quote(list, of.choice))
				const mixed = quote(listOf(of, lists), of.choice)
				const places = [...of.at.keys()]
				for (const place of places) expect(netAt(mixed, place)).toBe(netAt(takenAt(whole, of.at)(place), place))
				for (const each of whole) expect(seasonOf(mixed)).toBe(seasonOf(each))
				expect(sum([seasonOf(mixed), ...places.map((place) => netAt(mixed, place))])).toBe(mixed.netCents)
			}),
			runs,
		)
	})

	test('so it lies between the least and the most that its places come to', () => {
		fc.assert(
			fc.property(mixedJobs, (of) => {
				const lists = listsOf(of)
				const whole = lists.map((list) => quote(list, of.choice))
				const { netCents } = quote(listOf(of, lists), of.choice)
				const at = (pick: (...all: number[]) => number) =>
					[...of.at.keys()].reduce((all, place) => all + pick(...whole.map((each) => netAt(each, place))), 0)
				const season = whole[0] === undefined ? 0 : seasonOf(whole[0])
				expect(netCents).toBeGreaterThanOrEqual(season + at(Math.min))
				expect(netCents).toBeLessThanOrEqual(season + at(Math.max))
			}),
			runs,
		)
	})

	test('parts sum to the whole: classes to their part, lines and tax to the total, what is due to the total', () => {
		fc.assert(
			fc.property(mixedJobs, (of) => {
				const { lines, tax, netCents, totalCents, due } = quote(listOf(of, listsOf(of)), of.choice)
				for (const { split, cents } of lines) {
					expect(sum([split.plants, split.goods, split.labour])).toBe(cents)
					expect(Math.min(split.plants, split.goods, split.labour)).toBeGreaterThanOrEqual(0)
				}
				expect(sum(lines.map((line) => line.cents))).toBe(netCents)
				expect(netCents + sum(tax.map((line) => line.cents))).toBe(totalCents)
				expect(sum(due.map((each) => each.cents))).toBe(totalCents)
			}),
			runs,
		)
	})

	test('whichever list is read first, and in whatever order they were made, the same cents', () => {
		fc.assert(
			fc.property(mixedJobs, (of) => {
				const lists = listsOf(of)
				const [first, ...others] = lists.map((main) => quote(mixedList(main, takenAt(lists, of.at)), of.choice))
				for (const other of others) expect(inAnyOrder(other)).toEqual(first && inAnyOrder(first))
			}),
			runs,
		)
	})

	test('keeping a container and adding an extra never lowers the price before tax', () => {
		fc.assert(
			fc.property(mixedJobs, (of) => {
				const list = listOf(of, listsOf(of))
				const net = (choice: Mixed['choice']) => quote(list, choice).netCents
				const { leftOut, extras } = of.choice
				for (const kept of leftOut)
					expect(net({ extras, leftOut: leftOut.filter((id) => id !== kept) })).toBeGreaterThanOrEqual(net(of.choice))
				for (const { key } of of.jobs[0]?.extras ?? [])
					expect(net({ leftOut, extras: [...new Set([...extras, key])] })).toBeGreaterThanOrEqual(net(of.choice))
			}),
			runs,
		)
	})
})
