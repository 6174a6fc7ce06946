import type { AgreementDocument } from '../../agreement/document/document'
import { dueDay, type Happened } from '../../agreement/instalment/due-day'
import { sum } from '../../units/cents'
import type { Day } from '../../units/day'
import { type Charge, chargeCents } from '../charge'
import { type AgreedTax, instalmentCharge } from './instalment-charge'
import { type Agreed, type AgreedInstalment, instalmentKey } from './of-agreement'

export type Signed = {
	/** Each that both have signed, the one in force last. */
	readonly documents: readonly AgreementDocument[]
	readonly signedOn: Day
	readonly madeOn: Happened['madeOn']
	/** The day of an early end. */
	readonly endedOn: Day | null
	readonly tax: AgreedTax
	/** What was asked for under a key, so that another rate of tax changes nothing of it. */
	readonly asked: ReadonlyMap<string, Charge>
}

/** The document since which the `nth` instalment comes to what it does in the last. */
function sinceOf(documents: readonly AgreementDocument[], nth: number): number {
	const amounts = documents.map(({ instalments }) => instalments[nth - 1]?.cents)
	const first = amounts.findLastIndex((amount) => amount !== amounts.at(-1)) + 1
	return first === 0 ? 1 : (documents[first]?.number ?? 1)
}

/** A signed agreement as it is billed. @throws when nothing was signed */
export function agreedOf({ documents, signedOn, madeOn, endedOn, tax, asked }: Signed): Agreed {
	const document = documents.at(-1)
	if (document === undefined) throw new Error('agreedOf: nothing was signed')
	const { agreement } = document
	const instalments = document.instalments.map(({ cents, due }, index): AgreedInstalment => {
		const since = sinceOf(documents, index + 1)
		const before = asked.get(instalmentKey({ agreement }, index + 1, since))
		const charge = before?.netCents === cents ? before : instalmentCharge(cents, tax)
		return { dueOn: dueDay(due, { approvedOn: signedOn, madeOn }), charge, since }
	})
	const isOwed = ({ dueOn }: AgreedInstalment) => dueOn !== null && endedOn !== null && dueOn <= endedOn
	const owedCents = sum(instalments.filter(isOwed).map(({ charge }) => chargeCents(charge)))
	return { agreement, signedOn, instalments, ended: endedOn === null ? null : { on: endedOn, owedCents, netDays: 0 } }
}
