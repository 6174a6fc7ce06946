import { type Cents, cents, sum } from '../../units/cents'
import type { Day } from '../../units/day'
import type { AgreementDocument } from '../document/document'
import { dueDay, type Happened } from '../instalment/due-day'

/** What an ending leaves between the two sides, before tax. */
export type Remains = {
	readonly dueCents: Cents
	readonly dueCount: number
	readonly paidCents: Cents
	/** Still to be paid by the client, or back to the client: one of the two is nothing. */
	readonly remainsCents: Cents
	readonly backCents: Cents
	/** Of the instalments that will not be asked for. */
	readonly fallsAwayCents: Cents
}

/**
 * What remains due when an agreement ends on a day: the instalments due until that day, less what was paid for them.
 * One that waits for a visit that was not made by then falls away.
 */
export function remainsAt(
	{ instalments, totalCents }: Pick<AgreementDocument, 'instalments' | 'totalCents'>,
	happened: Happened,
	{ on, paidCents }: { readonly on: Day; readonly paidCents: Cents },
): Remains {
	const due = instalments.filter((each) => {
		const at = dueDay(each.due, happened)
		return at !== null && at <= on
	})
	const dueCents = sum(due.map((each) => each.cents))
	return {
		dueCents,
		dueCount: due.length,
		paidCents,
		remainsCents: cents(Math.max(0, dueCents - paidCents)),
		backCents: cents(Math.max(0, paidCents - dueCents)),
		fallsAwayCents: cents(totalCents - dueCents),
	}
}
