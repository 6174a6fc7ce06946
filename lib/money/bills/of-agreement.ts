import { type Cents, cents, sum } from '../../units/cents'
import type { Day } from '../../units/day'
import type { Id } from '../../units/id'
import { type Charge, chargeCents, part, together } from '../charge'
import type { Bill, Dated } from './bill'

/** One instalment of a signed document. `dueOn` is null while that follows from a visit that was not made yet. */
export type AgreedInstalment = {
	readonly dueOn: Day | null
	readonly charge: Charge
	/** The number of the document since which it comes to what it does; 1 for what the first one said. */
	readonly since: number
}

/** A signed agreement: its instalments in the order in which they were signed, each with its tax. */
export type Agreed = {
	readonly agreement: Id<'agreement'>
	readonly signedOn: Day
	readonly instalments: readonly AgreedInstalment[]
	/** Ended before its time: what of its whole price is owed after all, paid or not. */
	readonly ended: { readonly on: Day; readonly owedCents: Cents; readonly netDays: number } | null
}

const later = (a: Day, b: Day): Day => (a > b ? a : b)

type Of = Pick<Agreed, 'agreement'>

const start = ({ agreement }: Of) => `agreement ${agreement} `

/** Whether the key is of a bill of that agreement, and of no other's. */
export const isOfAgreement = (key: string, of: Of): boolean => key.startsWith(start(of))

/** One that an amendment changed is asked for anew, and what was asked for before is taken back. */
export const instalmentKey = (of: Of, nth: number, since: number) =>
	`${start(of)}instalment ${nth}${since === 1 ? '' : ` since ${since}`}`

function planned(agreed: Agreed): Bill[] {
	const of = agreed.instalments.length
	return agreed.instalments.flatMap(({ dueOn, charge, since }, index) => {
		if (chargeCents(charge) === 0) return []
		const dated: Dated | null = dueOn === null ? null : { on: later(dueOn, agreed.signedOn), netDays: 0 }
		const nth = index + 1
		return [{ key: instalmentKey(agreed, nth, since), part: { is: 'instalment', nth, of }, dated, charge }]
	})
}

const onOf = ({ dated }: Bill) => dated?.on ?? ''

/** What had been asked for by then stays, the earliest first, up to what is owed; the rest of that is asked for at once. */
function remaining(agreed: Agreed, { on, owedCents, netDays }: NonNullable<Agreed['ended']>): Bill[] {
	const whole = sum(agreed.instalments.map(({ charge }) => chargeCents(charge)))
	if (owedCents < 0 || owedCents > whole) throw new Error(`bills: ${owedCents} owed of an agreement of ${whole}`)
	let open: number = owedCents
	const bills = planned(agreed).toSorted((a, b) => onOf(a).localeCompare(onOf(b)))
	const split = bills.map((bill) => {
		const isAsked = bill.dated !== null && bill.dated.on <= on
		const kept = cents(isAsked ? Math.min(open, chargeCents(bill.charge)) : 0)
		open -= kept
		return { bill, kept, ...part(bill.charge, kept) }
	})
	const asked = split.flatMap(({ bill, kept, taken }) => (kept === 0 ? [] : [{ ...bill, charge: taken }]))
	if (open === 0) return asked
	const key = `${start(agreed)}remains`
	const { taken } = part(together(split.map(({ left }) => left)), cents(open))
	return [...asked, { key, part: { is: 'remains' }, dated: { on, netDays }, charge: taken }]
}

/**
 * What a signed agreement asks for: its instalments, each on its day and none before it is signed.
 * @throws when more is owed after its end than it came to
 */
export function billsOfAgreement(agreed: Agreed): Bill[] {
	return agreed.ended === null ? planned(agreed) : remaining(agreed, agreed.ended)
}
