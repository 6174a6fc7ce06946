import { z } from 'zod'
import { allocate } from '../../pricing/allocate'
import { centsSchema } from '../../units/schema'
import { visitKinds } from '../../visit/visit'
import { type AgreedSeason, fixedCents } from '../season'
import { addMonths, firstOfMonth } from './months'
import { type Due, dueSchema, type Plan, type Start } from './plan'

export const instalmentSchema = z.strictObject({
	number: z.int().min(1),
	cents: z.int().min(1).pipe(centsSchema),
	due: dueSchema,
})
export type Instalment = z.infer<typeof instalmentSchema>
type Part = Omit<Instalment, 'number'>

function dueAfter(start: Start, months: number): Due {
	switch (start.is) {
		case 'on':
			return { is: 'on', day: addMonths(start.day, months) }
		case 'first of the month':
			return { is: 'on', day: addMonths(firstOfMonth(start.from), months) }
		case 'on approval':
			return { is: 'on approval', monthsLater: months }
		default:
			return start satisfies never
	}
}

/** Each visit that the season includes; the install where it names none. */
function visitsOf({ quarter, year, visits }: AgreedSeason): Due[] {
	const at = (visit: (typeof visitKinds)[number], number: number): Due => ({
		is: 'at visit',
		season: { quarter, year },
		visit,
		number,
	})
	const dues = visitKinds.flatMap((kind) => {
		const count = visits.find((visit) => visit.kind === kind)?.count ?? 0
		return Array.from({ length: count }, (_, index) => at(kind, index + 1))
	})
	return dues.length === 0 ? [at('install', 1)] : dues
}

function split(total: Parameters<typeof allocate>[0], parts: readonly { weight: number; due: Due }[]): Part[] {
	const shares = allocate(
		total,
		parts.map(({ weight }) => weight),
	)
	return parts.flatMap(({ due }, index) => {
		const cents = shares[index]
		return cents === undefined || cents === 0 ? [] : [{ cents, due }]
	})
}

const alike = (dues: readonly Due[]) => dues.map((due) => ({ weight: 1, due }))

function partsOf(seasons: readonly AgreedSeason[], plan: Plan): Part[] {
	switch (plan.is) {
		case 'per visit':
			return seasons.flatMap((season) =>
				season.price.is === 'fixed' ? split(season.price.cents, alike(visitsOf(season))) : [],
			)
		case 'every months': {
			const dues = Array.from({ length: plan.count }, (_, index) => dueAfter(plan.start, index * plan.months))
			return split(fixedCents(seasons), alike(dues))
		}
		case 'own dates':
			return split(fixedCents(seasons), plan.parts)
		default:
			return plan satisfies never
	}
}

/** The fixed prices in instalments that sum to them to the cent; a part that comes to nothing is left out. */
export const instalmentsOf = (seasons: readonly AgreedSeason[], plan: Plan): Instalment[] =>
	partsOf(seasons, plan).map((part, index) => ({ number: index + 1, ...part }))
