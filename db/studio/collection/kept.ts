import { eq } from 'drizzle-orm'
import { type Collection, collectionSchema, emptyCollection } from '@/lib/season/collection/collection'
import type { SeasonId } from '@/lib/units/id'
import type { Reading } from '../../open'
import { collection } from '../../schema'

export type KeptCollection = { readonly version: number; readonly collection: Collection }

/** A season's house designs as they were last kept; version 0 while nothing was. */
export function collectionOf(db: Reading, of: SeasonId): KeptCollection {
	const [row] = db.select().from(collection).where(eq(collection.seasonId, of)).all()
	if (row === undefined) return { version: 0, collection: emptyCollection }
	return { version: row.version, collection: collectionSchema.parse(JSON.parse(row.document)) }
}
