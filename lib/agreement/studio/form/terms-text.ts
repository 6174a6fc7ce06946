import type { Typed } from '../../../forms/read'
import type { Cents } from '../../../units/cents'
import { visitKinds } from '../../../visit/visit'
import type { Due, Plan } from '../../instalment/plan'
import type { AgreedSeason } from '../../season'
import type { Terms } from '../../terms'

/** 125000 as it is typed: "1250.00" */
export const amountText = (amount: Cents | number): string => {
	const digits = String(Math.abs(amount)).padStart(3, '0')
	return `${amount < 0 ? '-' : ''}${digits.slice(0, -2)}.${digits.slice(-2)}`
}

function seasonText(season: AgreedSeason, index: number): Typed {
	const box = (name: string) => `season.${index}.${name}`
	const countOf = (kind: string) => season.visits.find((visit) => visit.kind === kind)?.count ?? 0
	return {
		[box('quarter')]: season.quarter,
		[box('year')]: String(season.year),
		[box('is')]: season.price.is,
		[box('price')]: season.price.is === 'fixed' ? amountText(season.price.cents) : '',
		[box('container')]: season.containers,
		...Object.fromEntries(visitKinds.map((kind) => [box(kind), String(countOf(kind))])),
	}
}

/** How a visit is named among what an instalment may wait for. */
export const visitText = ({ season, visit, number }: Extract<Due, { is: 'at visit' }>): string =>
	`${season.quarter} ${season.year} ${visit} ${number}`

function dueText(due: Due, box: (name: string) => string): Typed {
	switch (due.is) {
		case 'on':
			return { [box('due')]: 'day', [box('day')]: due.day, [box('months')]: '' }
		case 'on approval':
			return { [box('due')]: 'signing', [box('day')]: '', [box('months')]: String(due.monthsLater) }
		case 'at visit':
			return { [box('due')]: visitText(due), [box('day')]: '', [box('months')]: '' }
		default:
			return due satisfies never
	}
}

const noPlan = { plan: '', planMonths: '', planCount: '4', planStart: 'first of the month', planDay: '' }
const often: Readonly<Record<number, string>> = { 1: 'monthly', 3: 'quarterly' }

function planText(plan: Plan | null): Typed {
	if (plan === null) return noPlan
	switch (plan.is) {
		case 'per visit':
			return { ...noPlan, plan: plan.is }
		case 'every months': {
			const { months, count, start } = plan
			const planDay = start.is === 'on' ? start.day : start.is === 'first of the month' ? start.from : ''
			const boxes = { planMonths: String(months), planCount: String(count), planStart: start.is, planDay }
			return { plan: often[months] ?? 'months', ...boxes }
		}
		case 'own dates':
			return Object.assign(
				{ ...noPlan, plan: 'own' },
				...plan.parts.map(({ weight, due }, index) => ({
					[`part.${index}.share`]: amountText(weight),
					...dueText(due, (name) => `part.${index}.${name}`),
				})),
			)
		default:
			return plan satisfies never
	}
}

/** The boxes of the form as the terms fill them: read by the form they are the terms again. */
export function termsText({ from, to, seasons, plan, said, without }: Terms): Typed {
	return Object.assign(
		{
			...{ from: from ?? '', to: to ?? '', waters: said.waters ?? '', sold: said.sold, lent: said.lent, law: said.law },
			...{ lightsDownBy: said.lightsDownBy ?? '', noticeDays: said.noticeDays === null ? '' : String(said.noticeDays) },
			without,
		},
		planText(plan),
		...seasons.map(seasonText),
	)
}
