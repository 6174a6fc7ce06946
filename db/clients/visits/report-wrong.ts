import { and, eq } from 'drizzle-orm'
import type { Viewer } from '@/lib/access/viewer'
import type { ClientId, PlaceId, VisitId } from '@/lib/units/id'
import { type Tx, write } from '../../open'
import { enqueue } from '../../outbox/enqueue'
import { designers } from '../../proposals/recipients'
import { append } from '../../record/append'
import { client, visit } from '../../schema'
import type { Stamp } from '../../stamp'
import { type Denied, denied, hidden, visibleTo } from '../../viewer'
import { isPlaceOf, todayOf } from './find'
import { newVisit, seasonAtTheDoor } from './new-visit'
import { addPhotos } from './photos/rows'
import { type Incoming, type Placed, withPhotos } from './photos/with-photos'

export type Report = {
	readonly words: string
	/** Null where it is about all places. */
	readonly place: PlaceId | null
	readonly photos: readonly Incoming[]
}
export type Reported =
	| { readonly ok: true; readonly visit: VisitId }
	| { readonly ok: false; readonly why: 'no season' }
	| Denied

/** Null when the viewer may say that something is wrong at this client's; asked before any photo of theirs is read. */
export async function mayReport(viewer: Viewer, of: ClientId): Promise<Denied | null> {
	return denied(viewer, 'say what is wrong', of)
}

type Saying = Omit<Report, 'photos'> & { readonly placed: readonly Placed[] }

function reportIn(tx: Tx, viewer: Viewer, of: ClientId, { words, place, placed }: Saying, stamp: Stamp): Reported {
	const mine = and(eq(client.id, of), visibleTo(viewer, client.id))
	const isTheirs = tx.select({ id: client.id }).from(client).where(mine).all().length === 1
	if (viewer.is !== 'contact' || !isTheirs || !isPlaceOf(tx, of, place)) return hidden
	const season = seasonAtTheDoor(tx, of, todayOf(tx, stamp))
	if (season === undefined) return { ok: false, why: 'no season' }
	const row = newVisit(tx, stamp, { client: of, season })
	if (row === undefined) return hidden
	const said = { reported: words, reportedBy: viewer.person, reportedAt: stamp.at, placeId: place }
	tx.insert(visit)
		.values({ ...row, ...said })
		.run()
	const photos = addPhotos(tx, stamp, { client: of, visit: row.id, by: viewer.person }, placed)
	append(tx, stamp, viewer, {
		act: 'something wrong reported',
		object: `visit ${row.id}`,
		client: of,
		facts: { photos },
	})
	for (const person of designers(tx))
		enqueue(tx, stamp, { message: 'something is wrong', person, facts: { visit: row.id } })
	return { ok: true, visit: row.id }
}

/** A client says that something is wrong: it becomes a visit to be planned, and the designers hear of it. */
export async function reportWrong(
	viewer: Viewer,
	of: ClientId,
	{ photos, ...said }: Report,
	stamp: Stamp,
): Promise<Reported> {
	const no = denied(viewer, 'say what is wrong', of)
	if (no !== null) return no
	return withPhotos(photos, stamp, (placed) => write((tx) => reportIn(tx, viewer, of, { ...said, placed }, stamp)))
}
