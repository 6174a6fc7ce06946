import { asc } from 'drizzle-orm'
import type { LibraryRecipe } from '@/lib/proposal/design/propose'
import type { Grows } from '@/lib/recipe/recipe'
import type { Reading } from '../open'
import { recipe, recipeLine } from '../schema'

type Row = Pick<typeof recipeLine.$inferSelect, 'way' | 'count' | 'holdsId'>

function growsOf({ way, count, holdsId }: Row): Grows {
	if (way === 'spacing') return { way, share: count }
	return way === 'held' ? { way, count, holds: holdsId } : { way, count }
}

/** The library of recipes, by name, each with its lines for the reference container. */
export function libraryIn(db: Reading): LibraryRecipe[] {
	const lines = db.select().from(recipeLine).orderBy(asc(recipeLine.position)).all()
	return db
		.select({ id: recipe.id, name: recipe.name, quarter: recipe.quarter })
		.from(recipe)
		.orderBy(asc(recipe.name))
		.all()
		.map((each) => ({
			...each,
			lines: lines
				.filter(({ recipeId }) => recipeId === each.id)
				.map((line) => ({ material: line.materialId, role: line.role, holding: line.holding, grows: growsOf(line) })),
		}))
}
