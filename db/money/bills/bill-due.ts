import { asc, isNull } from 'drizzle-orm'
import type { Viewer } from '@/lib/access/viewer'
import type { Bill } from '@/lib/money/bills/bill'
import type { Day } from '@/lib/units/day'
import type { ClientId } from '@/lib/units/id'
import { read, type Tx, write } from '../../open'
import { client } from '../../schema'
import type { Stamp } from '../../stamp'
import { type Denied, denied } from '../../viewer'
import { type FoundAccount, findAccount } from '../find'
import { billsFrom } from './begun'
import { billingOf } from './bills'
import { writeCredit, writeInvoice } from './write'

export type Billed = { readonly invoices: number; readonly credits: number }

const notOwed = 'Not owed any more'

/** Writes what is wanting for one client today, each once: whoever comes second finds nothing left to do. */
function billOne(tx: Tx, viewer: Viewer, found: FoundAccount, since: Day | null, stamp: Stamp): Billed {
	const isAsked = ({ dated }: Bill) => since === null || (dated !== null && dated.on >= since)
	let invoices = 0
	for (;;) {
		const { invoices: wanting, bills } = billingOf(tx, found)
		const next = wanting.find(isAsked)
		const told = bills.find(({ bill }) => bill.key === next?.key)
		if (told === undefined) break
		writeInvoice(tx, stamp, viewer, found, told)
		invoices += 1
	}
	const { credits } = billingOf(tx, found)
	for (const { number, cents } of credits) {
		const said = writeCredit(tx, stamp, viewer, found, { invoice: number, cents, reason: notOwed })
		if (!said.ok) throw new Error(`billDue: ${number} cannot be credited: ${said.why}`)
	}
	return { invoices, credits: credits.length }
}

const clientsWithUs = (): ClientId[] =>
	read((db) =>
		db
			.select({ id: client.id })
			.from(client)
			.where(isNull(client.archivedAt))
			.orderBy(asc(client.createdAt), asc(client.id))
			.all()
			.map(({ id }) => id),
	)

/** Each client in a transaction of its own. */
function billEach(viewer: Viewer, clients: readonly ClientId[], since: Day | null, stamp: Stamp): Billed {
	return clients
		.map((of) =>
			write((tx): Billed => {
				const found = findAccount(tx, viewer, 'change accounts', of, stamp)
				return found.ok ? billOne(tx, viewer, found, since, stamp) : { invoices: 0, credits: 0 }
			}),
		)
		.reduce((all, each) => ({ invoices: all.invoices + each.invoices, credits: all.credits + each.credits }), {
			invoices: 0,
			credits: 0,
		})
}

export type BilledNow = ({ readonly ok: true } & Billed) | Denied

/** By hand: all that is to be asked for today, of one client or of all, however long ago it came to be owed. */
export async function billNow(
	viewer: Viewer,
	{ client: of }: { readonly client: ClientId | null },
	stamp: Stamp,
): Promise<BilledNow> {
	const no = denied(viewer, 'change accounts', of)
	if (no !== null) return no
	if (of === null) return { ok: true, ...billEach(viewer, clientsWithUs(), null, stamp) }
	return write((tx): BilledNow => {
		const found = findAccount(tx, viewer, 'change accounts', of, stamp)
		return found.ok ? { ok: true, ...billOne(tx, viewer, found, null, stamp) } : found
	})
}

/** By itself: what came to be owed since the studio said how it is paid. Twice or from two processes it writes once. @returns how many papers */
export async function billDue(viewer: Viewer, stamp: Stamp): Promise<number> {
	const since = denied(viewer, 'keep house', null) === null ? read(billsFrom) : null
	if (since === null) return 0
	const { invoices, credits } = billEach(viewer, clientsWithUs(), since, stamp)
	return invoices + credits
}
