import type { Quote } from '../../pricing/quote/quote'
import type { Hash } from '../../record/is-hash'
import { type Cents, cents, sum, zero } from '../../units/cents'
import type { Day } from '../../units/day'
import type { ProposalId } from '../../units/id'
import { apartOf, type Charge, chargeCents, inTurn, part } from '../charge'
import type { Bill, Dated } from './bill'

/** What became of an approval: one that was reopened is not owed any more; of a cancelled one `remainsCents`, tax in it. */
export type Since =
	| { readonly is: 'approved' | 'reopened' }
	| { readonly is: 'installed'; readonly on: Day }
	| { readonly is: 'cancelled'; readonly on: Day; readonly remainsCents: Cents }

export type Approval = {
	readonly proposal: ProposalId
	readonly revision: Hash
	readonly approvedOn: Day
	readonly quote: Pick<Quote, 'lines' | 'tax' | 'due'>
	readonly since: Since
}

type Due = Quote['due'][number]

const isApart = ({ when, cents: amount }: Due) => when.is !== 'by agreement' && amount > 0

function datedOf({ when }: Due, approvedOn: Day, installedOn: Day | null): Dated | null {
	switch (when.is) {
		case 'on approval':
			return { on: approvedOn, netDays: 0 }
		case 'at install':
			return installedOn === null ? null : { on: installedOn, netDays: 0 }
		case 'after install':
			return installedOn === null ? null : { on: installedOn, netDays: when.days }
		case 'by agreement':
			return null
		default:
			return when satisfies never
	}
}

type Named = 'whole' | 'deposit' | 'balance' | 'remains'

const bill = ({ proposal, revision }: Approval, is: Named, dated: Dated | null, charge: Charge): Bill => ({
	key: `proposal ${proposal} ${revision} ${is}`,
	part: { is },
	dated,
	charge,
})

/** Whole, or a deposit and a balance; what is paid once it is in has no day before. */
function planned(approval: Approval, installedOn: Day | null): Bill[] {
	const dues = approval.quote.due.filter(isApart)
	const { parts } = inTurn(
		apartOf(approval.quote),
		dues.map((due) => due.cents),
	)
	return dues.flatMap((due, index) => {
		const taken = parts[index]
		const is = dues.length === 1 ? 'whole' : index === 0 ? 'deposit' : 'balance'
		return taken === undefined ? [] : [bill(approval, is, datedOf(due, approval.approvedOn, installedOn), taken)]
	})
}

/** What of a cancelled approval is asked for here: the agreement's part of it goes on by its instalments. */
function remainsApart({ quote }: Approval, remains: Cents): Cents {
	const agreed = sum(quote.due.filter(({ when }) => when.is === 'by agreement').map((due) => due.cents))
	const most = chargeCents(apartOf(quote))
	if (remains < 0 || remains > agreed + most) throw new Error(`bills: ${remains} is more than was approved`)
	return cents(Math.max(0, remains - agreed))
}

/** What had been asked for on approval stays up to what remains due; the rest of that is asked for on cancelling. */
function remaining(approval: Approval, on: Day, remains: Cents): Bill[] {
	const netDays = approval.quote.due.map(({ when }) => (when.is === 'after install' ? when.days : 0))
	const owed = remainsApart(approval, remains)
	const [first] = planned(approval, null).filter(({ dated }) => dated !== null)
	const asked = first === undefined ? zero : chargeCents(first.charge)
	const kept = cents(Math.min(asked, owed))
	const { taken, left } = part(apartOf(approval.quote), kept)
	const rest = part(left, cents(owed - kept)).taken
	return [
		...(first === undefined || kept === 0 ? [] : [{ ...first, charge: taken }]),
		...(owed === kept ? [] : [bill(approval, 'remains', { on, netDays: Math.max(0, ...netDays) }, rest)]),
	]
}

/**
 * What is to be asked for of an approval beside the agreement, in exact parts that sum to what is owed of it: a business
 * pays so many days after the install, a household a deposit and a balance, what an agreement bills is not in it.
 * @throws when more remains due than was approved
 */
export function billsOfApproval(approval: Approval): Bill[] {
	const { since } = approval
	switch (since.is) {
		case 'reopened':
			return []
		case 'approved':
			return planned(approval, null)
		case 'installed':
			return planned(approval, since.on)
		case 'cancelled':
			return remaining(approval, since.on, since.remainsCents)
		default:
			return since satisfies never
	}
}
