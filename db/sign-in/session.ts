import { and, eq, gt, lte, sql } from 'drizzle-orm'
import { moment } from '@/lib/units/day'
import type { PersonId } from '@/lib/units/id'
import { prepared, read, write } from '../open'
import { session, signInToken, staff } from '../schema'
import { isIdle, lastUse, noteUse } from './activity'
import { stored } from './adapter'

const minute = 60_000

const sessionUnder = prepared((db) =>
	db
		.select({ person: session.userId, since: session.createdAt, role: staff.role })
		.from(session)
		.leftJoin(staff, eq(staff.personId, session.userId))
		.where(and(eq(session.sessionToken, sql.placeholder('key')), gt(session.expires, sql.placeholder('now'))))
		.prepare(),
)

/** Whose session the cookie's token is, while it lasts; noting the use at most once a minute. */
export async function personOfSession(token: string, now: Date): Promise<PersonId | undefined> {
	const key = stored(token)
	const [found] = read((db) => sessionUnder(db).all({ key, now: now.valueOf() }))
	if (found === undefined) return undefined
	const used = lastUse(key) ?? found.since
	if (isIdle(used, found.role === null ? 'contact' : 'staff', now)) return undefined
	if (now.valueOf() - Date.parse(used) > minute) noteUse(key, moment(now))
	return found.person
}

export async function endSession(token: string): Promise<void> {
	write((tx) =>
		tx
			.delete(session)
			.where(eq(session.sessionToken, stored(token)))
			.run(),
	)
}

/** What is over goes: sessions past their end, links past their ten minutes. */
export async function sweepSignIn(now: Date): Promise<void> {
	write((tx) => {
		tx.delete(session).where(lte(session.expires, now)).run()
		tx.delete(signInToken).where(lte(signInToken.expires, now)).run()
	})
}
