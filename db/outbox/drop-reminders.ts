import { and, eq, isNull, type SQL, sql } from 'drizzle-orm'
import type { Id, ProposalId } from '@/lib/units/id'
import type { Tx } from '../open'
import { type Message, outbox } from '../schema'
import type { Stamp } from '../stamp'

function drop(tx: Tx, message: Message, isOf: SQL, { at }: Pick<Stamp, 'at'>): void {
	const unsent = and(eq(outbox.message, message), isOf, isNull(outbox.sentAt), isNull(outbox.droppedAt))
	tx.update(outbox).set({ droppedAt: at }).where(unsent).run()
}

/** Reminders of a proposal that were not sent yet: after a while without a mail server only the latest goes. */
export const dropReminders = (tx: Tx, of: ProposalId, stamp: Pick<Stamp, 'at'>): void =>
	drop(tx, 'reminder', sql`json_extract(${outbox.facts}, '$.proposal') = ${of}`, stamp)

/** The same of an agreement that is to be signed. */
export const dropAgreementReminders = (tx: Tx, of: Id<'agreement'>, stamp: Pick<Stamp, 'at'>): void =>
	drop(tx, 'agreement reminder', sql`json_extract(${outbox.facts}, '$.agreement') = ${of}`, stamp)
