import { DrizzleAdapter } from '@auth/drizzle-adapter'
import { and, eq, gt } from 'drizzle-orm'
import { sha256 } from '@/lib/record/hash'
import { moment } from '@/lib/units/day'
import { id, type PersonId } from '@/lib/units/id'
import { type Db, read, write } from '../open'
import { person, session, signInToken, staff } from '../schema'
import { type Arrival, noteArrival } from './arrival'
import { noAccounts } from './no-accounts'

const day = 86_400_000
/** Absolute ends; what is idle ends sooner (see `session.ts`). */
const longestMs = { staff: 7 * day, contact: 30 * day } as const

/** What is stored of a session's token: the cookie alone holds the token. */
export const stored = (token: string) => sha256(token)

function absoluteEnd(db: Pick<Db, 'select'>, personId: PersonId, now: Date): Date {
	const [member] = db.select().from(staff).where(eq(staff.personId, personId)).all()
	return new Date(now.valueOf() + longestMs[member === undefined ? 'contact' : 'staff'])
}

type Session = { readonly sessionToken: string; readonly userId: string; readonly expires: Date }

function keepSession(sessionToken: string, userId: string, now: Date, arrival?: Arrival, by = arrival?.by): Session {
	const who = id<'person'>(userId)
	const expires = write((tx) => {
		const end = absoluteEnd(tx, who, now)
		const row = { sessionToken: stored(sessionToken), userId: who, expires: end, createdAt: moment(now) }
		tx.insert(session)
			.values({ ...row, device: arrival?.words ?? '', provenBy: by ?? null })
			.run()
		if (arrival !== undefined) noteArrival(tx, who, arrival)
		return end
	})
	return { sessionToken, userId, expires }
}

function sessionWithUser(sessionToken: string, now: Date) {
	const [found] = read((db) =>
		db
			.select({ user: person, session })
			.from(session)
			.innerJoin(person, eq(person.id, session.userId))
			.where(and(eq(session.sessionToken, stored(sessionToken)), gt(session.expires, now)))
			.all(),
	)
	if (found === undefined) return null
	const { userId, expires } = found.session
	return { user: found.user, session: { sessionToken, userId, expires } }
}

/**
 * The library's adapter over our tables, with what it lacks: tokens stored as hashes, an absolute end that no use
 * moves, links that work once and before their time is over. People are made by the studio alone. `arrival` is the
 * browser that a session is made for, `by` how its holder showed that the mailbox is theirs.
 */
export function sessionAdapter(now: () => Date, arrival?: Arrival, by = arrival?.by) {
	const library = read((db) =>
		DrizzleAdapter(db, { usersTable: person, sessionsTable: session, accountsTable: noAccounts }),
	)
	return {
		...library,
		createUser: () => Promise.reject(new Error('Nobody is made by signing in.')),
		createSession: async ({ sessionToken, userId }: Pick<Session, 'sessionToken' | 'userId'>) =>
			keepSession(sessionToken, userId, now(), arrival, by),
		getSessionAndUser: async (sessionToken: string) => sessionWithUser(sessionToken, now()),
		updateSession: async () => null,
		deleteSession: async (sessionToken: string) => {
			write((tx) =>
				tx
					.delete(session)
					.where(eq(session.sessionToken, stored(sessionToken)))
					.run(),
			)
		},
		useVerificationToken: async ({ token }: { token: string }) => {
			const [used] = write((tx) => tx.delete(signInToken).where(eq(signInToken.token, token)).returning().all())
			if (used === undefined || used.expires <= now()) return null
			return { identifier: used.identifier, token, expires: used.expires }
		},
	}
}
