import { type Cents, cents, zero } from '@/lib/units/cents'
import { thousandths } from '@/lib/units/decimal'
import { allocate } from '../allocate'
import type { PriceList } from '../price-list'

/** When an amount falls due; the days follow from the approval and the install. */
export type When =
	| { readonly is: 'on approval' }
	| { readonly is: 'at install' }
	| { readonly is: 'after install'; readonly days: number }
	| { readonly is: 'by agreement' }
export type Due = { readonly cents: Cents; readonly when: When }

function apart(amount: Cents, { payer, depositPercent, isUnderAgreement }: PriceList): Due[] {
	if (payer.kind === 'business') return [{ cents: amount, when: { is: 'after install', days: payer.netDays } }]
	if (isUnderAgreement || depositPercent === 0) return [{ cents: amount, when: { is: 'at install' } }]
	const deposit = Number(thousandths(depositPercent))
	const [first = zero, rest = zero] = allocate(amount, [deposit, 100_000 - deposit])
	const parts: Due[] = [
		{ cents: first, when: { is: 'on approval' } },
		{ cents: rest, when: { is: 'at install' } },
	]
	return parts.filter((part, index) => part.cents !== 0 || index === 0)
}

/** What is to be paid and when, summing to the total: by the agreement's instalments, or for this proposal apart. */
export function dueOf(total: Cents, byAgreement: Cents, list: PriceList): Due[] {
	const instalments: Due[] = byAgreement === 0 ? [] : [{ cents: byAgreement, when: { is: 'by agreement' } }]
	const rest = cents(total - byAgreement)
	return rest === 0 && instalments.length > 0 ? instalments : [...instalments, ...apart(rest, list)]
}
