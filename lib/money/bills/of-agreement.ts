import { type Cents, cents, sum } from '../../units/cents'
import type { Day } from '../../units/day'
import type { Id } from '../../units/id'
import { type Charge, chargeCents, inTurn, part } from '../charge'
import type { Bill, Dated } from './bill'

/** A signed agreement: its price, and the instalments that sum to it, tax in them as in the charge. */
export type Agreed = {
	readonly agreement: Id<'agreement'>
	readonly signedOn: Day
	readonly charge: Charge
	readonly instalments: readonly { readonly dueOn: Day; readonly cents: Cents }[]
	/** Ended before its time: what of its whole price is owed after all, paid or not. */
	readonly ended: { readonly on: Day; readonly owedCents: Cents; readonly netDays: number } | null
}

const later = (a: Day, b: Day): Day => (a > b ? a : b)

function planned({ agreement, signedOn, charge, instalments }: Agreed): Bill[] {
	const whole = chargeCents(charge)
	const asked = sum(instalments.map((each) => each.cents))
	if (asked !== whole) throw new Error(`bills: instalments of ${asked} for an agreement of ${whole}`)
	const inOrder = instalments.toSorted((a, b) => a.dueOn.localeCompare(b.dueOn))
	const { parts } = inTurn(
		charge,
		inOrder.map((each) => each.cents),
	)
	return inOrder.flatMap(({ dueOn }, index) => {
		const taken = parts[index]
		if (taken === undefined || chargeCents(taken) === 0) return []
		const dated: Dated = { on: later(dueOn, signedOn), netDays: 0 }
		const nth = index + 1
		const key = `agreement ${agreement} instalment ${nth}`
		return [{ key, part: { is: 'instalment', nth, of: inOrder.length }, dated, charge: taken }]
	})
}

/** What had been asked for by then stays, the earliest first, up to what is owed; the rest of that is asked for at once. */
function remaining(agreed: Agreed, { on, owedCents, netDays }: NonNullable<Agreed['ended']>): Bill[] {
	const whole = chargeCents(agreed.charge)
	if (owedCents < 0 || owedCents > whole) throw new Error(`bills: ${owedCents} owed of an agreement of ${whole}`)
	const asked = planned(agreed).filter(({ dated }) => dated !== null && dated.on <= on)
	let open: number = owedCents
	const amounts = asked.map(({ charge }) => {
		const kept = cents(Math.min(open, chargeCents(charge)))
		open -= kept
		return kept
	})
	const { parts, left } = inTurn(agreed.charge, amounts)
	const kept = asked.flatMap((bill, index) => {
		const charge = parts[index]
		return charge === undefined || chargeCents(charge) === 0 ? [] : [{ ...bill, charge }]
	})
	if (open === 0) return kept
	const key = `agreement ${agreed.agreement} remains`
	return [...kept, { key, part: { is: 'remains' }, dated: { on, netDays }, charge: part(left, cents(open)).taken }]
}

/**
 * What a signed agreement asks for: its instalments, each on its day and none before it is signed.
 * @throws when the instalments do not sum to the charge, or more is owed after its end than it came to
 */
export function billsOfAgreement(agreed: Agreed): Bill[] {
	return agreed.ended === null ? planned(agreed) : remaining(agreed, agreed.ended)
}
