import { and, eq, isNull, sql } from 'drizzle-orm'
import type { ProposalId } from '@/lib/units/id'
import type { Tx } from '../open'
import { outbox } from '../schema'
import type { Stamp } from '../stamp'

/** Reminders of a proposal that were not sent yet: after a while without a mail server only the latest goes. */
export function dropReminders(tx: Tx, of: ProposalId, { at }: Pick<Stamp, 'at'>): void {
	const isOf = sql`json_extract(${outbox.facts}, '$.proposal') = ${of}`
	const unsent = and(eq(outbox.message, 'reminder'), isOf, isNull(outbox.sentAt), isNull(outbox.droppedAt))
	tx.update(outbox).set({ droppedAt: at }).where(unsent).run()
}
