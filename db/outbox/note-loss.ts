import { and, eq } from 'drizzle-orm'
import { z } from 'zod'
import type { Viewer } from '@/lib/access/viewer'
import { idSchema } from '@/lib/units/schema'
import type { Tx } from '../open'
import { append } from '../record/append'
import { type outbox, proposal } from '../schema'
import type { Stamp } from '../stamp'

const reported = z.object({ proposal: idSchema<'proposal'>(), number: z.int() })

/** Writes down that a mail did not arrive; when it asks for an answer that is waited for, the ledger shows it. */
export function noteLoss(tx: Tx, stamp: Stamp, viewer: Viewer, mail: typeof outbox.$inferSelect): void {
	const { message, personId } = mail
	const about = reported.safeParse(JSON.parse(mail.facts)).data
	const [row] = about ? tx.select().from(proposal).where(eq(proposal.id, about.proposal)).all() : []
	append(tx, stamp, viewer, {
		act: 'mail did not arrive',
		object: row === undefined ? `person ${personId}` : `proposal ${row.id}`,
		client: row?.clientId ?? null,
		facts: { message, person: personId },
	})
	if (about === undefined || (message !== 'proposal published' && message !== 'reminder')) return
	const standing = and(eq(proposal.id, about.proposal), eq(proposal.revisionNumber, about.number))
	tx.update(proposal).set({ undeliveredAt: stamp.at }).where(standing).run()
}
