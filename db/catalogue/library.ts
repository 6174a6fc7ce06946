import { asc } from 'drizzle-orm'
import type { Viewer } from '@/lib/access/viewer'
import type { Library } from '@/lib/recipe/library/library'
import { read } from '../open'
import { recipe, studio } from '../schema'
import { denied } from '../viewer'
import { designMaterials } from './design-materials'
import { libraryIn } from './read-recipes'

/** The studio's recipes with what they are made of: no price and no supplier among it. */
export async function readLibrary(viewer: Viewer): Promise<Library | undefined> {
	if (denied(viewer, 'see the catalogue', null) !== null) return undefined
	return read((db) => {
		const [house] = db.select({ lengths: studio.lengths }).from(studio).all()
		const own = db.select({ id: recipe.id, note: recipe.note }).from(recipe).orderBy(asc(recipe.name)).all()
		const lines = new Map(libraryIn(db).map((each) => [each.id, each]))
		const materials = designMaterials(db).toSorted((a, b) => (a.name < b.name ? -1 : 1))
		return {
			recipes: own.flatMap(({ id, note }) => {
				const found = lines.get(id)
				return found === undefined ? [] : [{ ...found, id, note }]
			}),
			materials: new Map(materials.map((each) => [each.id, each])),
			lengths: house?.lengths ?? 'in',
		}
	})
}
