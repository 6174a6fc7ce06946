import { marginPercent } from '../../pricing/quote/costing'
import { type Cents, sum } from '../../units/cents'
import type { ClientId } from '../../units/id'

/** One client's job of a season. Values before tax; minutes are person-minutes. */
export type SeasonJob = {
	readonly client: ClientId
	readonly valueCents: Cents
	readonly estimated: { readonly costCents: Cents; readonly minutes: number }
	/** Null until it is known. */
	readonly actual: { readonly costCents: Cents | null; readonly minutes: number | null }
}

/** Of the jobs whose cost is known alone, so that value and cost are of the same jobs. */
export type ActualResult = {
	readonly jobs: number
	readonly missing: number
	readonly valueCents: Cents
	readonly costCents: Cents
	readonly marginPercent: number | null
}

export type Result = {
	readonly jobs: number
	readonly valueCents: Cents
	readonly estimatedCostCents: Cents
	readonly estimatedMinutes: number
	/** Before overhead, in per cent of the value; null without a value. */
	readonly estimatedMarginPercent: number | null
	readonly actual: ActualResult
	/** Of the jobs whose minutes are known; `estimated` is what those were thought to take. */
	readonly hours: { readonly missing: number; readonly actualMinutes: number; readonly estimatedMinutes: number }
}

export type SeasonResult = {
	readonly clients: readonly (Result & { readonly client: ClientId })[]
	readonly all: Result
}

/** To a thousandth of a minute, as all minutes here. */
const minutesOf = (all: readonly number[]) => Math.round(all.reduce((total, each) => total + each * 1000, 0)) / 1000

function actualOf(jobs: readonly SeasonJob[]): ActualResult {
	const known = jobs.flatMap(({ valueCents, actual }) =>
		actual.costCents === null ? [] : [{ valueCents, costCents: actual.costCents }],
	)
	const valueCents = sum(known.map((each) => each.valueCents))
	const costCents = sum(known.map((each) => each.costCents))
	const missing = jobs.length - known.length
	return { jobs: known.length, missing, valueCents, costCents, marginPercent: marginPercent(valueCents, costCents) }
}

function hoursOf(jobs: readonly SeasonJob[]): Result['hours'] {
	const known = jobs.flatMap(({ actual, estimated }) =>
		actual.minutes === null ? [] : [{ actual: actual.minutes, estimated: estimated.minutes }],
	)
	return {
		missing: jobs.length - known.length,
		actualMinutes: minutesOf(known.map(({ actual }) => actual)),
		estimatedMinutes: minutesOf(known.map(({ estimated }) => estimated)),
	}
}

function resultOf(jobs: readonly SeasonJob[]): Result {
	const valueCents = sum(jobs.map((job) => job.valueCents))
	const cost = sum(jobs.map(({ estimated }) => estimated.costCents))
	return {
		jobs: jobs.length,
		valueCents,
		estimatedCostCents: cost,
		estimatedMinutes: minutesOf(jobs.map(({ estimated }) => estimated.minutes)),
		estimatedMarginPercent: marginPercent(valueCents, cost),
		actual: actualOf(jobs),
		hours: hoursOf(jobs),
	}
}

/** What a season brought, by client (the largest value first) and in all. */
export function seasonResult(jobs: readonly SeasonJob[]): SeasonResult {
	const clients = [...new Set(jobs.map(({ client }) => client))]
		.map((client) => ({ client, ...resultOf(jobs.filter((job) => job.client === client)) }))
		.toSorted((a, b) => b.valueCents - a.valueCents || a.client.localeCompare(b.client))
	return { clients, all: resultOf(jobs) }
}
