import { and, eq, isNull } from 'drizzle-orm'
import type { PersonId } from '@/lib/units/id'
import type { Tx } from '../open'
import { outbox, person, session, signInToken } from '../schema'
import type { Stamp } from '../stamp'

/** Ends at once whatever would let a person in: sessions, links and codes that were mailed, and those on their way. */
export function shutOut(tx: Tx, who: PersonId, stamp: Stamp): void {
	tx.delete(session).where(eq(session.userId, who)).run()
	for (const { email } of tx.select({ email: person.email }).from(person).where(eq(person.id, who)).all())
		tx.delete(signInToken).where(eq(signInToken.identifier, email)).run()
	const asked = and(eq(outbox.personId, who), eq(outbox.message, 'sign-in link'))
	tx.update(outbox)
		.set({ droppedAt: stamp.at, leasedUntil: null })
		.where(and(asked, isNull(outbox.sentAt), isNull(outbox.droppedAt)))
		.run()
}
