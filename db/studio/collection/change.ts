import { eq } from 'drizzle-orm'
import type { Viewer } from '@/lib/access/viewer'
import { type Change, changed, type Refusal } from '@/lib/season/collection/change'
import type { Id, SeasonId } from '@/lib/units/id'
import { type Tx, write } from '../../open'
import { append } from '../../record/append'
import { collection, material, recipe, season } from '../../schema'
import type { Stamp } from '../../stamp'
import { type Denied, denied, hidden } from '../../viewer'
import { collectionOf } from './kept'

export type ChangedCollection =
	| { readonly ok: true; readonly version: number }
	| { readonly ok: false; readonly why: Refusal | 'saved elsewhere' | 'unknown' }
	| Denied

type Changing = { readonly season: SeasonId; readonly version: number; readonly change: Change }

const recipesIn = (change: Change): Id<'recipe'>[] =>
	change.is === 'design' ? Object.values(change.design.recipes).filter((id) => id !== null) : []

/** What is chosen has to be there: a recipe of the library, a material of the catalogue. */
function isKnown(tx: Tx, change: Change): boolean {
	const hasRecipe = (id: Id<'recipe'>) => tx.select().from(recipe).where(eq(recipe.id, id)).all().length === 1
	const lines = change.is === 'extra' ? change.extra.lines : []
	return (
		recipesIn(change).every(hasRecipe) &&
		lines.every((line) => tx.select().from(material).where(eq(material.id, line.material)).all().length === 1)
	)
}

/** One thing of a season's house designs changed, over the version that was read. */
export async function changeCollection(
	viewer: Viewer,
	{ season: of, version, change }: Changing,
	stamp: Stamp,
): Promise<ChangedCollection> {
	const no = denied(viewer, 'change the catalogue', null)
	if (no !== null || viewer.is !== 'staff') return no ?? hidden
	return write((tx): ChangedCollection => {
		if (tx.select().from(season).where(eq(season.id, of)).all().length === 0) return hidden
		const kept = collectionOf(tx, of)
		if (kept.version !== version) return { ok: false, why: 'saved elsewhere' }
		if (!isKnown(tx, change)) return { ok: false, why: 'unknown' }
		const next = changed(kept.collection, change)
		if (!next.ok) return next
		const row = { version: version + 1, document: JSON.stringify(next.collection), updatedAt: stamp.at }
		const by = { ...row, updatedBy: viewer.person }
		tx.insert(collection)
			.values({ seasonId: of, ...by })
			.onConflictDoUpdate({ target: collection.seasonId, set: by })
			.run()
		append(tx, stamp, viewer, {
			act: 'collection changed',
			object: `season ${of}`,
			client: null,
			facts: { version: version + 1 },
		})
		return { ok: true, version: version + 1 }
	})
}
