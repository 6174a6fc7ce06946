import { eq } from 'drizzle-orm'
import { z } from 'zod'
import type { Viewer } from '@/lib/access/viewer'
import { write } from '../../open'
import { enqueue } from '../../outbox/enqueue'
import { designers } from '../../proposals/recipients'
import { append } from '../../record/append'
import { isFirst } from '../../record/once'
import { seal } from '../../record/seal'
import { agreement, person } from '../../schema'
import type { Stamp } from '../../stamp'
import type { Denied } from '../../viewer'
import { type Answering, type Refused, stepTo } from './step'

/** What is sealed when an agreement is declined. */
export const declineWords = z.strictObject({
	name: z.string(),
	address: z.string(),
	browser: z.string(),
	reason: z.string(),
})

export type Declining = Answering & { readonly reason: string; readonly browser: string }
export type Declined = { readonly ok: true } | Refused | Denied

/** Declines what was issued; the one before, if there is one, goes on to hold. */
export async function declineAgreement(viewer: Viewer, declining: Declining, stamp: Stamp): Promise<Declined> {
	return write((tx): Declined => {
		const step = stepTo(tx, viewer, declining, 'decline', stamp)
		if (!step.ok) return step
		if (!isFirst(tx, stamp, viewer, declining.once)) return { ok: false, why: 'sent before' }
		const { id, clientId: client, number } = step.found.row
		const { reason, browser } = declining
		const [who] = tx.select().from(person).where(eq(person.id, step.person)).all()
		const words = seal(tx, stamp, client, { name: who?.name ?? '', address: who?.email ?? '', browser, reason })
		tx.update(agreement).set({ state: step.to.to, answeredAt: stamp.at }).where(eq(agreement.id, id)).run()
		append(tx, stamp, viewer, {
			act: 'agreement declined',
			object: `agreement ${id}`,
			client,
			facts: { number, document: step.to.issued },
			sealed: words,
		})
		for (const each of designers(tx))
			enqueue(tx, stamp, { message: 'agreement declined', person: each, facts: { agreement: id, number } })
		return { ok: true }
	})
}
