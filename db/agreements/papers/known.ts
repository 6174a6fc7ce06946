import { eq } from 'drizzle-orm'
import type { Viewer } from '@/lib/access/viewer'
import type { Hash } from '@/lib/record/hash'
import type { Moment } from '@/lib/units/day'
import { read } from '../../open'
import { agreementPaper, studio } from '../../schema'
import { denied } from '../../viewer'

export type KnownPaper = { readonly at: Moment; readonly bytes: number; readonly timeZone: string }

/** When a file with this SHA-256 was kept. Whoever has the hash has the file: nothing else of it is told. */
export async function knownPaper(viewer: Viewer, sha256: Hash): Promise<KnownPaper | undefined> {
	if (denied(viewer, 'check a paper', null) !== null) return undefined
	const { at, bytes } = agreementPaper
	return read((db) =>
		db
			.select({ at, bytes, timeZone: studio.timeZone })
			.from(agreementPaper)
			.innerJoin(studio, eq(studio.id, 1))
			.where(eq(agreementPaper.sha256, sha256))
			.all(),
	)[0]
}
