import { eq } from 'drizzle-orm'
import type { Viewer } from '@/lib/access/viewer'
import type { PersonId, VisitId } from '@/lib/units/id'
import type { StudioVisit } from '@/lib/visit/shown'
import { visitRows } from '../clients/visits/rows'
import { read } from '../open'
import { visit } from '../schema'
import { denied, viewerOf } from '../viewer'

export type MailedVisit = Omit<StudioVisit, 'studioNote'>

/** The visit that a mail reports; undefined once its client is gone, or when its reader may not see it any more. */
export async function mailedVisit(
	viewer: Viewer,
	{ visit: id, person }: { visit: VisitId; person: PersonId },
): Promise<MailedVisit | undefined> {
	if (denied(viewer, 'send mail', null) !== null) return undefined
	const reader = await viewerOf(person)
	const [found] = read((db) => visitRows(db, eq(visit.id, id), 'latest first', 1))
	if (found === undefined || denied(reader, 'see the client', found.client) !== null) return undefined
	const { studioNote: _, ...shown } = found
	return shown
}
