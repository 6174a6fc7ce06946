import { fullDay } from '../../format/day'
import type { MoneyFormat } from '../../format/money'
import { quantity } from '../../format/words'
import { seasonName } from '../../season/season'
import type { Instalment } from './instalments'
import type { Due, Plan } from './plan'

/** "on 1 December 2026", "when you sign", "when winter 2026–27 is in" */
export function dueInWords(due: Due): string {
	switch (due.is) {
		case 'on':
			return `on ${fullDay(due.day)}`
		case 'on approval':
			return due.monthsLater === 0 ? 'when you sign' : `${quantity(due.monthsLater, 'month')} after you sign`
		case 'at visit':
			return due.visit === 'install' && due.number === 1
				? `when ${seasonName(due.season)} is in`
				: `after ${due.visit} ${due.number} of ${seasonName(due.season)}`
		default:
			return due satisfies never
	}
}

/** "$295.00 on 1 December 2026; $295.00 on 1 March 2027" */
export const instalmentsInWords = (all: readonly Instalment[], money: MoneyFormat): string =>
	all.length === 0
		? 'each season apart, as its proposal says'
		: all.map(({ cents, due }) => `${money(cents)} ${dueInWords(due)}`).join('; ')

/** "in 4 quarterly instalments" */
export function planInWords(plan: Plan | null): string {
	if (plan === null) return 'each season apart'
	switch (plan.is) {
		case 'per visit':
			return 'an instalment with each visit'
		case 'every months': {
			const often = { 1: 'monthly', 3: 'quarterly' }[plan.months] ?? `every ${plan.months} months`
			return plan.count === 1 ? 'in one payment' : `in ${plan.count} instalments, ${often}`
		}
		case 'own dates':
			return plan.parts.length === 1 ? 'in one payment' : `in ${plan.parts.length} instalments on dates of their own`
		default:
			return plan satisfies never
	}
}
