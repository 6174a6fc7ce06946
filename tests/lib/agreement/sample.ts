import fc from 'fast-check'
import type { AgreementFacts } from '@/lib/agreement/facts'
import type { Due, Plan } from '@/lib/agreement/instalment/plan'
import type { AgreedSeason } from '@/lib/agreement/season'
import { emptyTerms, type Terms } from '@/lib/agreement/terms'
import { quarters } from '@/lib/season/season'
import { cents } from '@/lib/units/cents'
import { addDays, day } from '@/lib/units/day'
import { id } from '@/lib/units/id'
import { visitKinds } from '@/lib/visit/visit'

const padded = (n: number) => String(n).padStart(3, '0')
export const containerId = (n: number) => id<'container'>(`00000000-0000-7000-8000-00000000c${padded(n)}`)
export const placeId = (n: number) => id<'place'>(`00000000-0000-7000-8000-00000000a${padded(n)}`)
export const clientId = id<'client'>('00000000-0000-7000-8000-00000000b001')
export const agreementId = id<'agreement'>('00000000-0000-7000-8000-00000000d001')
export const personId = (n: number) => id<'person'>(`00000000-0000-7000-8000-00000000f${padded(n)}`)

const fixed = (amount: number) => ({ is: 'fixed', cents: cents(amount) }) as const

export const winter: AgreedSeason = {
	...{ quarter: 'winter', year: 2026, price: fixed(61_250), containers: [containerId(1), containerId(2)] },
	visits: [
		{ kind: 'install', count: 1 },
		{ kind: 'take-down', count: 1 },
	],
}
export const spring: AgreedSeason = {
	...{ quarter: 'spring', year: 2027, price: fixed(38_401), containers: [containerId(1)] },
	visits: [
		{ kind: 'watering', count: 2 },
		{ kind: 'install', count: 1 },
	],
}
export const summer: AgreedSeason = {
	...{ quarter: 'summer', year: 2027, price: { is: 'quoted' }, containers: [containerId(2)] },
	visits: [{ kind: 'install', count: 1 }],
}

export const quarterly = {
	is: 'every months',
	months: 3,
	count: 4,
	start: { is: 'on', day: day('2026-12-01') },
} as const satisfies Plan

/** Complete: it can be issued as it is. */
export const terms: Terms = {
	...emptyTerms,
	from: day('2026-12-01'),
	to: day('2027-11-30'),
	seasons: [winter, spring, summer],
	plan: quarterly,
	said: { ...emptyTerms.said, waters: 'client', lightsDownBy: day('2027-02-15'), law: 'the State of Westmere' },
}

export const facts: AgreementFacts = {
	currency: 'USD',
	studio: { name: 'Thornapple Studio', signedBy: 'Ada Wrenfield' },
	client: { id: clientId, name: 'Marrowby Bakery' },
	places: [
		{ id: placeId(1), name: 'Shop door', address: '4 Quay Lane' },
		{ id: placeId(2), name: 'Yard gate', address: '9 Mill Row' },
	],
	containers: [
		{ id: containerId(1), place: placeId(1), name: 'Left urn', words: 'urn, 16 in across' },
		{ id: containerId(2), place: placeId(2), name: 'Trough', words: 'trough, 36 in by 8 in' },
		{ id: containerId(3), place: placeId(2), name: 'Spare pot', words: 'round planter, 12 in across' },
	],
}

const anySeasonName = fc.record({ quarter: fc.constantFrom(...quarters), year: fc.integer({ min: 2026, max: 2030 }) })
const anyDay = fc.integer({ min: 0, max: 4000 }).map((days) => addDays(day('2024-01-01'), days))
const anyDue: fc.Arbitrary<Due> = fc.oneof(
	anyDay.map((on): Due => ({ is: 'on', day: on })),
	fc.nat(24).map((monthsLater): Due => ({ is: 'on approval', monthsLater })),
	fc
		.tuple(anySeasonName, fc.constantFrom(...visitKinds), fc.integer({ min: 1, max: 9 }))
		.map(([season, visit, number]): Due => ({ is: 'at visit', season, visit, number })),
)

export const anyPlan: fc.Arbitrary<Plan> = fc.oneof(
	fc.constant<Plan>({ is: 'per visit' }),
	fc.record({
		is: fc.constant('every months' as const),
		months: fc.integer({ min: 1, max: 12 }),
		start: fc.oneof(
			anyDay.map((on) => ({ is: 'on' as const, day: on })),
			anyDay.map((from) => ({ is: 'first of the month' as const, from })),
			fc.constant({ is: 'on approval' as const }),
		),
		count: fc.integer({ min: 1, max: 36 }),
	}),
	fc
		.array(fc.record({ weight: fc.integer({ min: 1, max: 10_000_000 }), due: anyDue }), { minLength: 1, maxLength: 36 })
		.map((parts): Plan => ({ is: 'own dates', parts })),
)

export const anySeason: fc.Arbitrary<AgreedSeason> = fc
	.record({
		name: anySeasonName,
		price: fc.oneof(
			fc.integer({ min: 0, max: 10_000_000 }).map(fixed),
			fc.nat(40).map(fixed),
			fc.constant({ is: 'quoted' as const }),
		),
		visits: fc.subarray([...visitKinds]),
		count: fc.integer({ min: 1, max: 12 }),
	})
	.map(({ name, price, visits, count }) => ({
		...name,
		price,
		containers: [containerId(1)],
		visits: visits.map((kind) => ({ kind, count })),
	}))
export const anySeasons = fc.array(anySeason, { maxLength: 6 })
