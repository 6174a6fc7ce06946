import { and, asc, eq, inArray, isNull, sql } from 'drizzle-orm'
import type { Viewer } from '@/lib/access/viewer'
import type { InvoiceNumber } from '@/lib/money/invoice/number'
import { lateList } from '@/lib/money/late/late-list'
import { notToRemind, type Owed, reminderDue } from '@/lib/money/late/reminder'
import { accountOf } from '@/lib/money/ledger/account'
import { isWaking } from '@/lib/season/due-reminder'
import { type Day, dayOf, hourOf } from '@/lib/units/day'
import type { ClientId } from '@/lib/units/id'
import { read, type Tx, write } from '../open'
import { enqueue } from '../outbox/enqueue'
import { contactsOf } from '../proposals/recipients'
import { append } from '../record/append'
import { client, entry, invoiceAsked, outbox, studio } from '../schema'
import type { Stamp } from '../stamp'
import { type Denied, denied } from '../viewer'
import { type FoundAccount, findAccount } from './find'
import { ledgerOf } from './ledger'

type Late = Owed & { readonly number: InvoiceNumber }

/** What of a client's is past its day, with the last reminder of each. */
function lateOf(tx: Tx, { client: { id }, studio: { timeZone }, today }: FoundAccount): Late[] {
	const list = lateList([{ client: id, account: accountOf(ledgerOf(tx, id)) }], today)
	const open = list.clients.flatMap(({ invoices }) => invoices)
	return open.map(({ number, dueOn, openCents }) => {
		const [row] = tx.select().from(invoiceAsked).where(eq(invoiceAsked.number, number)).all()
		const last = row?.remindedAt ?? null
		return { number, dueOn, openCents, remindedOn: last === null ? null : dayOf(last, timeZone) }
	})
}

/** After a while without a mail server only the latest goes. */
function dropUnsent(tx: Tx, of: ClientId, { at }: Stamp): void {
	const isOf = sql`json_extract(${outbox.facts}, '$.account') = ${of}`
	const unsent = and(eq(outbox.message, 'payment reminder'), isOf, isNull(outbox.sentAt), isNull(outbox.droppedAt))
	tx.update(outbox).set({ droppedAt: at }).where(unsent).run()
}

/** One mail for all that is late, to each who may approve. */
function send(tx: Tx, viewer: Viewer, { client: { id } }: FoundAccount, late: readonly Late[], stamp: Stamp): void {
	const numbers = late.map(({ number }) => number)
	tx.update(invoiceAsked)
		.set({ remindedAt: stamp.at, undeliveredAt: null })
		.where(inArray(invoiceAsked.number, numbers))
		.run()
	append(tx, stamp, viewer, {
		act: 'client reminded',
		object: `client ${id}`,
		client: id,
		facts: { invoices: numbers },
	})
	dropUnsent(tx, id, stamp)
	for (const person of contactsOf(tx, id, { whoSeeMoney: true }))
		enqueue(tx, stamp, { message: 'payment reminder', person, facts: { account: id } })
}

export type RemindedLate =
	| { readonly ok: true }
	| { readonly ok: false; readonly why: NonNullable<ReturnType<typeof notToRemind>> }
	| Denied

/** By hand. Who was reminded in the last two days is reminded only when `again` is said. */
export async function remindLate(
	viewer: Viewer,
	{ client: of, again }: { readonly client: ClientId; readonly again: boolean },
	stamp: Stamp,
): Promise<RemindedLate> {
	return write((tx): RemindedLate => {
		const found = findAccount(tx, viewer, 'change accounts', of, stamp)
		if (!found.ok) return found
		const late = lateOf(tx, found)
		const [first] = late
		if (first === undefined) return { ok: false, why: 'not past due' }
		const isNew = late.some((each) => notToRemind(each, found.today) === null)
		if (!isNew && !again) return { ok: false, why: 'reminded lately' }
		send(tx, viewer, found, late, stamp)
		return { ok: true }
	})
}

function clientsWithEntries(): ClientId[] {
	const found = read((db) =>
		db
			.selectDistinct({ id: client.id })
			.from(client)
			.innerJoin(entry, eq(entry.clientId, client.id))
			.where(isNull(client.archivedAt))
			.orderBy(asc(client.id))
			.all(),
	)
	return found.map(({ id }) => id)
}

function remindEach(viewer: Viewer, isDue: (late: Late, today: Day) => boolean, stamp: Stamp): number {
	return clientsWithEntries().filter((of) =>
		write((tx) => {
			const found = findAccount(tx, viewer, 'change accounts', of, stamp)
			const late = found.ok ? lateOf(tx, found) : []
			if (!found.ok || !late.some((each) => isDue(each, found.today))) return false
			send(tx, viewer, found, late, stamp)
			return true
		}),
	).length
}

/** By hand, all who are late; who was reminded in the last two days is left in peace. */
export async function remindAllLate(
	viewer: Viewer,
	stamp: Stamp,
): Promise<{ readonly ok: true; readonly reminded: number } | Denied> {
	const no = denied(viewer, 'change accounts', null)
	if (no !== null) return no
	return { ok: true, reminded: remindEach(viewer, (late, today) => notToRemind(late, today) === null, stamp) }
}

/** By itself, in the studio's waking hours. @returns how many clients */
export async function remindLateDue(viewer: Viewer, stamp: Stamp): Promise<number> {
	if (denied(viewer, 'keep house', null) !== null) return 0
	const [house] = read((db) => db.select().from(studio).all())
	if (house === undefined || !isWaking(hourOf(stamp.at, house.timeZone))) return 0
	return remindEach(viewer, (late, today) => reminderDue(late, today) !== null, stamp)
}
