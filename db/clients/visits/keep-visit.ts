import type { Viewer } from '@/lib/access/viewer'
import type { ClientId, SeasonId, VisitId } from '@/lib/units/id'
import type { VisitCommand } from '@/lib/visit/decide'
import { write } from '../../open'
import { visit } from '../../schema'
import type { Stamp } from '../../stamp'
import { denied, hidden } from '../../viewer'
import { findVisit, todayOf } from './find'
import { newVisit } from './new-visit'
import { removePhotos } from './photos/files'
import { type Incoming, withPhotos } from './photos/with-photos'
import { orRefused, type Refusal, Refused } from './refused'
import { type Written, writeVisit } from './write-visit'

export type Keeping = {
	readonly command: VisitCommand
	readonly written: Written
	readonly photos: readonly Incoming[]
}
export type KeptVisit = { readonly ok: true; readonly visit: VisitId } | Refusal

/** Plans a visit, writes it down as made, puts right what is written of it, or drops it. */
export async function keepVisit(
	viewer: Viewer,
	id: VisitId,
	{ command, written, photos }: Keeping,
	stamp: Stamp,
): Promise<KeptVisit> {
	const no = denied(viewer, 'record visits', null)
	if (no !== null || viewer.is !== 'staff') return no ?? hidden
	const { person: by } = viewer
	return orRefused(() =>
		withPhotos(photos, stamp, (placed) => {
			const out = write((tx) => {
				const found = findVisit(tx, viewer, 'record visits', id, stamp)
				if (!found.ok) throw new Refused(found)
				return writeVisit(tx, stamp, viewer, found, { by, command, written, placed })
			})
			removePhotos(out)
			return { ok: true, visit: id }
		}),
	)
}

type Where = { readonly client: ClientId; readonly season: SeasonId }

/** A visit of the studio's own making: to come, or made already and written down now. */
export async function startVisit(
	viewer: Viewer,
	where: Where,
	{ command, written, photos }: Keeping,
	stamp: Stamp,
): Promise<KeptVisit> {
	const no = denied(viewer, 'record visits', null)
	if (no !== null || viewer.is !== 'staff') return no ?? hidden
	const { person: by } = viewer
	return orRefused(() =>
		withPhotos(photos, stamp, (placed) =>
			write((tx): KeptVisit => {
				const row = newVisit(tx, stamp, where)
				if (row === undefined) return hidden
				tx.insert(visit).values(row).run()
				writeVisit(tx, stamp, viewer, { row, today: todayOf(tx, stamp) }, { by, command, written, placed })
				return { ok: true, visit: row.id }
			}),
		),
	)
}
