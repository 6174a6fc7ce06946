import { describe, expect, test } from 'vitest'
import type { Job } from '@/lib/pricing/job'
import { price } from '@/lib/pricing/price'
import { mixedJob } from '@/lib/pricing/quote/mixed-job'
import { mixedList } from '@/lib/pricing/quote/mixed-list'
import { quote } from '@/lib/pricing/quote/quote'
import { cents } from '@/lib/units/cents'
import { bare, containerId, job, line, placeId, visit, words } from '../sample'

const everything = { leftOut: [], extras: [] }
const [front, side] = [placeId(1), placeId(2)]

/** Two doors with a pot each: a ribbon of 10.54 in both, or a globe of 26.00 and one of 38.02. */
const ribbon = [line('ribbon', 'faux', 'none', 1, 502, 1)]
const of = (more: Partial<Job> = {}) =>
	job({
		visits: [visit(1), visit(2, { taxMilliPercent: 7250 })],
		containers: [bare(1, { lines: ribbon }), bare(2, { place: side, lines: ribbon })],
		...more,
	})
const withGlobes = (more: Partial<Job> = {}) =>
	of({
		containers: [
			bare(1, { lines: [line('globe', 'ornament', 'none', 1, 1238, 1)] }),
			bare(2, { place: side, lines: [line('globe', 'ornament', 'none', 1, 1810, 1)] }),
		],
		...more,
	})
const lists = (more: Partial<Job> = {}, other: Partial<Job> = {}) =>
	[price(of(more), words).list, price(withGlobes({ ...more, ...other }), words).list] as const
/** The plain option at the front, globes at the side. */
const mixed = (more: Partial<Job> = {}, other: Partial<Job> = {}) => {
	const [plain, globes] = lists(more, other)
	return mixedList(plain, (place) => (place === side ? globes : plain))
}
const amounts = (list: ReturnType<typeof mixed>, is: string) =>
	list.parts.filter((part) => part.is === is).map((part) => [part.place, part.cents])

describe('a list of two options', () => {
	test('has each container at the price of the option of its place, and what comes with a visit once', () => {
		expect(amounts(mixed(), 'container')).toEqual([
			[front, 4500],
			[side, 7000],
		])
		for (const is of ['travel', 'disposal', 'design']) expect(amounts(mixed(), is)).toEqual(amounts(lists()[0], is))
	})

	test('bears the discount as it was frozen with each container', () => {
		const agreement = { is: 'discount', percent: 12.5 } as const
		const [plain, globes] = lists({ agreement })
		expect(amounts(mixed({ agreement }), 'container')).toEqual([
			amounts(plain, 'container')[0],
			amounts(globes, 'container')[1],
		])
		expect(quote(mixed({ agreement }), everything).discountPercent).toBe(12.5)
	})

	test('lifts each visit to the minimum by itself', () => {
		const topUps = quote(mixed(), everything).lines.filter(({ is }) => is === 'minimum visit')
		const whole = lists().map((list) => quote(list, everything).lines.filter(({ is }) => is === 'minimum visit'))
		expect(topUps).toEqual([whole[0]?.[0], whole[1]?.[1]])
		expect(topUps.map(({ place }) => place)).toEqual([front, side])
	})

	test('taxes each class at the rate of its place', () => {
		const { tax } = quote(mixed(), everything)
		expect(tax.map(({ milliPercent }) => milliPercent)).toEqual([6000, 7250])
		const [plain, globes] = lists()
		expect(tax[0]).toEqual(quote(plain, everything).tax[0])
		expect(tax[1]).toEqual(quote(globes, everything).tax[1])
	})
})

describe('a season at a fixed price', () => {
	const agreement = { is: 'fixed', cents: cents(61_900), containers: [1, 2].map(containerId) } as const
	const supplement = { supplementCents: cents(6000) }

	test('is asked once, shared out by what each place would have of it', () => {
		const season = amounts(mixed({ agreement }, supplement), 'season')
		expect(season.map(([place]) => place)).toEqual([front, side])
		expect(season.reduce((all, [, each]) => all + Number(each), 0)).toBe(61_900)
	})

	test('a supplement is asked for the places that take its option: its share there, as frozen', () => {
		const [, globes] = lists({ agreement }, supplement)
		expect(amounts(mixed({ agreement }, supplement), 'supplement')).toEqual([amounts(globes, 'supplement')[1]])
		expect(quote(mixed({ agreement }, supplement), everything).netCents).toBeLessThan(61_900 + 6000)
		expect(quote(mixed({ agreement }, supplement), everything).netCents).toBeGreaterThan(61_900)
	})

	test('at no price stays none', () => {
		expect(amounts(mixed({ agreement: { ...agreement, cents: cents(0) } }), 'season')).toEqual([])
	})
})

describe('what is of no one offer', () => {
	test('throws', () => {
		const alone = price(job({ visits: [visit(1)], containers: [bare(1)] }), words).list
		expect(() => mixedList(lists()[0], () => alone)).toThrow('mixedList: "pot 2" is not in every list')
		const other = job({ visits: [visit(1)], containers: [bare(1)] })
		expect(() => mixedJob(of(), () => other)).toThrow('mixedJob: "pot 2" is not in every job')
	})
})

test('the job of both: each container as its place takes it', () => {
	const both = mixedJob(of(), (place) => (place === side ? withGlobes() : of()))
	expect(both.containers.map(({ lines }) => lines.map(({ name }) => name))).toEqual([['ribbon'], ['globe']])
	expect(both.visits).toEqual(of().visits)
})
