import { and, eq } from 'drizzle-orm'
import type { Viewer } from '@/lib/access/viewer'
import type { Moment } from '@/lib/units/day'
import type { PersonId } from '@/lib/units/id'
import { type Reading, read } from '../open'
import { person, session } from '../schema'
import { stored } from './adapter'

export type Proof = { readonly address: string; readonly by: 'link' | 'code'; readonly at: Moment }

/** How and when a session's holder showed that the mailbox is theirs; undefined of one that does not say, or is not theirs. */
export function proofIn(db: Reading, token: string, of: PersonId): Proof | undefined {
	const theirs = and(eq(session.sessionToken, stored(token)), eq(session.userId, of))
	const [row] = db
		.select({ address: person.email, by: session.provenBy, at: session.createdAt })
		.from(session)
		.innerJoin(person, eq(person.id, session.userId))
		.where(theirs)
		.all()
	return row === undefined || row.by === null ? undefined : { ...row, by: row.by }
}

/** The proof that the viewer's own session began by. */
export async function ownProof(viewer: Viewer, token: string | undefined): Promise<Proof | undefined> {
	if (viewer.is !== 'contact' || token === undefined) return undefined
	return read((db) => proofIn(db, token, viewer.person))
}
