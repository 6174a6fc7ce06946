import type { VisitKind } from '@/lib/visit/visit'
import type { ClientKey } from './clients'
import type { PersonKey } from './people'
import type { ContainerKey } from './sites/containers'

type CastSeason = {
	readonly quarter: 'spring' | 'summer' | 'autumn' | 'winter'
	/** Years after that of the winter which is being sold. */
	readonly later: 0 | 1
	/** Null where it is quoted. */
	readonly cents: number | null
	readonly visits: readonly (readonly [kind: VisitKind, count: number])[]
}

export type AgreementStep = { readonly on: number; readonly at: string } & (
	| { readonly does: 'issue'; readonly signBy: number }
	| { readonly does: 'open' | 'sign'; readonly by: PersonKey }
	| { readonly does: 'decline'; readonly by: PersonKey; readonly why: string }
)

/** Days count from today, below zero what has been. */
export type CastAgreement = {
	readonly client: ClientKey
	/** The year begins on that day, or on the first of the month that follows it. */
	readonly begins: { readonly on: number; readonly is: 'that day' | 'first of a month' }
	readonly containers: readonly ContainerKey[]
	readonly waters: 'client' | 'studio'
	readonly seasons: readonly CastSeason[]
	/** Monthly or quarterly. */
	readonly every: 1 | 3
	readonly story: readonly AgreementStep[]
}

const put = [['install', 1]] as const
const putAndWatered = [
	['install', 1],
	['watering', 3],
] as const
const putAndCleared = [
	['install', 1],
	['check', 1],
	['take-down', 1],
] as const

/** The seasons of the year that begins with a spring, at a price each. */
const fromSpring = (spring: number, summer: number, autumn: number): readonly CastSeason[] => [
	{ quarter: 'spring', later: 1, cents: spring, visits: put },
	{ quarter: 'summer', later: 1, cents: summer, visits: putAndWatered },
	{ quarter: 'autumn', later: 1, cents: autumn, visits: put },
	{ quarter: 'winter', later: 1, cents: null, visits: putAndCleared },
]

/** A year that both have signed, one that waits for a name, and one that was declined. */
export const agreements: readonly CastAgreement[] = [
	{
		client: 'inn',
		begins: { on: -105, is: 'that day' },
		containers: ['innStepsLeft', 'innStepsRight', 'innTerrace'],
		waters: 'client',
		seasons: [
			{ quarter: 'autumn', later: 0, cents: 96_000, visits: [] },
			{ quarter: 'winter', later: 0, cents: 96_000, visits: putAndCleared },
			{ quarter: 'spring', later: 1, cents: 84_000, visits: put },
			{ quarter: 'summer', later: 1, cents: 84_000, visits: put },
		],
		every: 1,
		story: [
			{ on: -113, at: '15:10', does: 'issue', signBy: -100 },
			{ on: -112, at: '17:05', does: 'open', by: 'innApprover' },
			{ on: -111, at: '18:20', does: 'sign', by: 'innApprover' },
		],
	},
	{
		client: 'bakery',
		begins: { on: 60, is: 'first of a month' },
		containers: ['bakeryLeft', 'bakeryRight', 'bakeryBox'],
		waters: 'client',
		seasons: fromSpring(48_000, 57_500, 54_000),
		every: 3,
		story: [
			{ on: -4, at: '16:40', does: 'issue', signBy: 12 },
			{ on: -3, at: '18:15', does: 'open', by: 'bakeryApprover' },
		],
	},
	{
		client: 'dental',
		begins: { on: 60, is: 'first of a month' },
		containers: ['dentalLeft', 'dentalRight'],
		waters: 'studio',
		seasons: fromSpring(52_500, 61_000, 58_500),
		every: 3,
		story: [
			{ on: -11, at: '14:20', does: 'issue', signBy: 9 },
			{ on: -7, at: '15:35', does: 'open', by: 'dentalApprover' },
			{
				...{ on: -7, at: '15:50', does: 'decline', by: 'dentalApprover' },
				why: 'We move to larger rooms in the summer and cannot promise a year yet. Please ask us again then.',
			},
		],
	},
]
