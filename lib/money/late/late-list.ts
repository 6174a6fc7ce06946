import { type Cents, sum } from '../../units/cents'
import type { Day } from '../../units/day'
import type { ClientId } from '../../units/id'
import type { Account, OpenInvoice } from '../ledger/account'
import { type Band, bandOf, bands, daysLate } from './band'

export type ClientAccount = { readonly client: ClientId; readonly account: Account }

export type LateInvoice = OpenInvoice & { readonly daysLate: number; readonly band: Band }
export type ByBand = Readonly<Record<Band, Cents>>

export type LateClient = {
	readonly client: ClientId
	/** Open and past due, the latest first. */
	readonly invoices: readonly LateInvoice[]
	/** Everything that is open, by how long it is past due. */
	readonly byBand: ByBand
	readonly lateCents: Cents
}

export type LateList = {
	readonly clients: readonly LateClient[]
	readonly byBand: ByBand
	readonly lateCents: Cents
}

type Aged = { readonly band: Band; readonly openCents: Cents }

function byBand(aged: readonly Aged[]): ByBand {
	const of = (band: Band) => sum(aged.filter((each) => each.band === band).map(({ openCents }) => openCents))
	const [none, first, second, third, last] = bands
	return { [none]: of(none), [first]: of(first), [second]: of(second), [third]: of(third), [last]: of(last) }
}

const isLate = ({ band }: Aged) => band !== 'not due yet'

const lateSum = (aged: readonly Aged[]) => sum(aged.filter(isLate).map(({ openCents }) => openCents))

const aged = ({ invoices }: Account, today: Day): LateInvoice[] =>
	invoices
		.filter(({ openCents }) => openCents > 0)
		.map((invoice) => ({
			...invoice,
			daysLate: daysLate(invoice.dueOn, today),
			band: bandOf(invoice.dueOn, today),
		}))

const latest = (invoices: readonly LateInvoice[]) => invoices[0]?.daysLate ?? 0

/** Who is past due on `today` (a day of the studio's time zone) and by how much; who waits longest stands first. */
export function lateList(accounts: readonly ClientAccount[], today: Day): LateList {
	const all = accounts.map(({ client, account }) => ({ client, open: aged(account, today) }))
	const clients = all
		.filter(({ open }) => open.some(isLate))
		.map(({ client, open }) => ({
			client,
			invoices: open.filter(isLate).toSorted((a, b) => b.daysLate - a.daysLate),
			byBand: byBand(open),
			lateCents: lateSum(open),
		}))
		.toSorted((a, b) => latest(b.invoices) - latest(a.invoices) || b.lateCents - a.lateCents)
	const everything = all.flatMap(({ open }) => open)
	return { clients, byBand: byBand(everything), lateCents: lateSum(everything) }
}
