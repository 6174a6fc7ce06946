import { asc, eq, isNull } from 'drizzle-orm'
import type { Viewer } from '@/lib/access/viewer'
import type { CollectionPage } from '@/lib/season/collection/pages'
import { problems } from '@/lib/season/collection/problems'
import { collectionStandIns } from '@/lib/season/collection/stand-ins'
import type { SeasonId } from '@/lib/units/id'
import { designMaterials } from '../../catalogue/design-materials'
import { libraryIn } from '../../catalogue/read-recipes'
import { type Reading, read } from '../../open'
import { material, season } from '../../schema'
import { denied } from '../../viewer'
import { collectionOf } from './kept'

const materialsIn = (db: Reading) =>
	db
		.select({ id: material.id, name: material.name, role: material.role, unit: material.unit, kind: material.kind })
		.from(material)
		.where(isNull(material.retiredAt))
		.orderBy(asc(material.role), asc(material.name))
		.all()

/** A season's house designs with all that they are chosen from; no cost among it. */
export async function readCollection(viewer: Viewer, of: SeasonId): Promise<CollectionPage | undefined> {
	if (denied(viewer, 'see the catalogue', null) !== null) return undefined
	return read((db) => {
		const [found] = db.select().from(season).where(eq(season.id, of)).all()
		if (found === undefined) return undefined
		const [kept, library] = [collectionOf(db, of), libraryIn(db)]
		return {
			...kept,
			season: found,
			recipes: library.map(({ id, name, quarter }) => ({ id, name, isOfSeason: quarter === found.quarter })),
			materials: materialsIn(db),
			problems: problems(kept.collection, library),
			standIns: collectionStandIns(kept.collection, library, designMaterials(db), found.quarter),
		}
	})
}
