import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { readOffer } from '@/db/proposals/read-offer'
import { viewerOf } from '@/db/viewer'
import { type ContainerKey, containers } from '@/demo/cast/sites/containers'
import type { Size } from '@/demo/cast/vessels'
import { keysOf } from '@/demo/play/keys'
import type { Seeded } from '@/demo/seed'
import type { Viewer } from '@/lib/access/viewer'
import { everything } from '@/lib/pricing/quote/choice'
import { quote } from '@/lib/pricing/quote/quote'
import type { Offer } from '@/lib/proposal/offer/offer'
import { sum } from '@/lib/units/cents'
import { day } from '@/lib/units/day'
import type { ProposalId } from '@/lib/units/id'
import { type Played, played } from './stage'

/**
 * What one container comes to, in cents. Sanity, not a law: common practice, no published source. `medium` is 18 inches
 * round, `large` 24 square; a trough of 40 by 14 inches opens about as wide as the large, a 36-inch box a little wider than the medium.
 */
const bands: Record<Size, readonly [from: number, to: number]> = {
	small: [10_000, 20_000],
	medium: [15_000, 30_000],
	large: [30_000, 50_000],
	box: [15_000, 30_000],
	trough: [25_000, 45_000],
}
/** The way, set-up, the dump, design, soil: per place and per container, beside the containers themselves. */
const besides = { place: [4_000, 8_000], design: [1_500, 3_000], container: [600, 3_500] } as const
const taxAtMost = 0.07

let of: Played
let cast: Seeded
let designer: Viewer

beforeAll(async () => {
	of = await played(day('2026-10-06'))
	cast = of.cast
	designer = await viewerOf(cast.people.designer.id)
})
afterAll(() => of.end())

const sizeOf = (id: string): Size => {
	const key = keysOf(containers).find((each: ContainerKey) => cast.containers[each] === id)
	if (key === undefined) throw new Error(`${id} is no container of the cast`)
	return containers[key].size
}

async function published(): Promise<Offer[]> {
	const ids: ProposalId[] = [...Object.values(cast.proposals), ...Object.values(cast.autumn)]
	const pages = await Promise.all(ids.map((id) => readOffer(designer, id, { at: cast.now })))
	return pages.flatMap((page) => page?.offer ?? [])
}

const add = (amounts: readonly number[]) => amounts.reduce((all, each) => all + each, 0)

describe('what was published is of a usual size', () => {
	test('each container', async () => {
		const odd = (await published()).flatMap(({ client, options }) =>
			options.flatMap(({ prices }) =>
				prices.parts.flatMap((part) => {
					if (part.is !== 'container') return []
					const [from, to] = bands[sizeOf(part.container)]
					return part.cents < from || part.cents > to ? [{ client, name: part.name, cents: part.cents }] : []
				}),
			),
		)
		expect(odd).toEqual([])
	})

	test('each total, tax and charges in it, also where a season is priced fixed', async () => {
		const offers = await published()
		const odd = offers.flatMap(({ client, season, containers: own, places, options }) => {
			const band = (end: 0 | 1) =>
				add(own.map(({ id }) => bands[sizeOf(id)][end] + besides.container[end])) +
				places.length * besides.place[end] +
				besides.design[end]
			return options
				.map(({ prices }) => quote(prices, everything).totalCents)
				.filter((total) => total < band(0) || total > band(1) * (1 + taxAtMost))
				.map((total) => ({ client, season, total }))
		})
		expect(offers).toHaveLength(28)
		expect(odd).toEqual([])
	})

	test('what is due sums to the total', async () => {
		for (const { options } of await published())
			for (const { prices } of options) {
				const asked = quote(prices, everything)
				expect(sum(asked.due.map(({ cents }) => cents))).toBe(asked.totalCents)
			}
	})
})
