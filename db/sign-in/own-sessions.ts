import { and, desc, eq, gt } from 'drizzle-orm'
import type { Viewer } from '@/lib/access/viewer'
import { sha256 } from '@/lib/record/hash'
import type { Moment } from '@/lib/units/day'
import type { PersonId } from '@/lib/units/id'
import { type Reading, read, write } from '../open'
import { session } from '../schema'
import type { Stamp } from '../stamp'
import { timeZoneOf } from '../studio/time-zone'
import { type Denied, hidden } from '../viewer'
import { isIdle, lastUse } from './activity'
import { stored } from './adapter'
import { forgetBrowsers } from './arrival'
import { shutOut } from './shut-out'

export type OwnSession = {
	/** Stands for the session on its page: neither what the cookie holds nor what is kept of it follows from it. */
	readonly handle: string
	/** What a person would call the browser; empty where nothing was noted. */
	readonly words: string
	readonly since: Moment
	readonly seen: Moment
	readonly isThis: boolean
}

const handleOf = (key: string) => sha256(`session ${key}`).slice(0, 32)

/** Whose sessions they are: of those who come in at a door. */
const whose = (viewer: Viewer): PersonId | undefined =>
	viewer.is === 'staff' || viewer.is === 'contact' ? viewer.person : undefined

const sessionsOf = (db: Reading, of: PersonId, now: Date) =>
	db
		.select({ key: session.sessionToken, words: session.device, since: session.createdAt })
		.from(session)
		.where(and(eq(session.userId, of), gt(session.expires, now)))
		.orderBy(desc(session.createdAt))
		.all()

/** Where the viewer is signed in, this browser first, then the last seen; `token` is what this one's cookie holds. */
export async function ownSessions(
	viewer: Viewer,
	token: string | undefined,
	now: Date,
): Promise<{ readonly timeZone: string; readonly sessions: readonly OwnSession[] } | undefined> {
	const of = whose(viewer)
	if (of === undefined) return undefined
	const mine = token === undefined ? '' : stored(token)
	const who = viewer.is === 'staff' ? 'staff' : 'contact'
	const rows = read((db) => sessionsOf(db, of, now))
	const sessions = rows
		.map(({ key, words, since }) => ({ key, words, since, seen: lastUse(key) ?? since }))
		.filter(({ seen }) => !isIdle(seen, who, now))
		.map(({ key, ...shown }) => ({ ...shown, handle: handleOf(key), isThis: key === mine }))
		.toSorted((a, b) => Number(b.isThis) - Number(a.isThis) || b.seen.localeCompare(a.seen))
	return { timeZone: read(timeZoneOf), sessions }
}

export type SessionEnded = { readonly ok: true } | Denied

/** Ends one of the viewer's own; another person's is as one that is not there. */
export async function endOwnSession(viewer: Viewer, handle: string): Promise<SessionEnded> {
	const of = whose(viewer)
	if (of === undefined) return hidden
	return write((tx): SessionEnded => {
		const keys = tx.select({ key: session.sessionToken }).from(session).where(eq(session.userId, of)).all()
		const found = keys.find(({ key }) => handleOf(key) === handle)
		if (found === undefined) return hidden
		tx.delete(session).where(eq(session.sessionToken, found.key)).run()
		return { ok: true }
	})
}

/** Ends all of them, this one too, with links on their way; whichever browser comes next is told of by mail. */
export async function signOutEverywhere(viewer: Viewer, stamp: Stamp): Promise<SessionEnded> {
	const of = whose(viewer)
	if (of === undefined) return hidden
	return write((tx): SessionEnded => {
		shutOut(tx, of, stamp)
		forgetBrowsers(tx, of, stamp)
		return { ok: true }
	})
}
