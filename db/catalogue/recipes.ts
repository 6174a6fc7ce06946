import { and, eq, inArray, ne } from 'drizzle-orm'
import type { Viewer } from '@/lib/access/viewer'
import type { Grows, RecipeLine } from '@/lib/recipe/recipe'
import type { Quarter } from '@/lib/season/season'
import type { Id } from '@/lib/units/id'
import { type Tx, write } from '../open'
import { append } from '../record/append'
import { material, recipe, recipeLine } from '../schema'
import type { Stamp } from '../stamp'
import { type Denied, denied, hidden } from '../viewer'

export type RecipeFields = {
	readonly name: string
	readonly quarter: Quarter
	readonly note: string
	readonly lines: readonly RecipeLine[]
}
export type SavedRecipe =
	| { readonly ok: true; readonly id: Id<'recipe'> }
	| { readonly ok: false; readonly why: 'name taken' }
	| Denied

const columnsOf = (grows: Grows) => ({
	way: grows.way,
	count: grows.way === 'spacing' ? grows.share : grows.count,
	holdsId: grows.way === 'held' ? grows.holds : null,
})

function keepLines(tx: Tx, recipeId: Id<'recipe'>, lines: RecipeFields['lines'], stamp: Stamp): void {
	tx.delete(recipeLine).where(eq(recipeLine.recipeId, recipeId)).run()
	for (const [position, { material: materialId, role, holding, grows }] of lines.entries())
		tx.insert(recipeLine)
			.values({ id: stamp.id<'recipe line'>(), recipeId, position, materialId, role, holding, ...columnsOf(grows) })
			.run()
}

/** Every material that a recipe names is one of the catalogue's. */
function isKnown(tx: Tx, lines: RecipeFields['lines']): boolean {
	const holds = lines.flatMap(({ grows }) => (grows.way === 'held' && grows.holds !== null ? [grows.holds] : []))
	const named = [...new Set([...lines.map(({ material: of }) => of), ...holds])]
	return tx.select({ id: material.id }).from(material).where(inArray(material.id, named)).all().length === named.length
}

/** A new recipe for the reference container, or the one named by `of` changed with all its lines. */
export async function saveRecipe(
	viewer: Viewer,
	of: Id<'recipe'> | null,
	{ lines, ...fields }: RecipeFields,
	stamp: Stamp,
): Promise<SavedRecipe> {
	const no = denied(viewer, 'change the catalogue', null)
	if (no !== null) return no
	return write((tx): SavedRecipe => {
		if (!isKnown(tx, lines)) return hidden
		const id = of ?? stamp.id<'recipe'>()
		const namesake = and(eq(recipe.name, fields.name), ne(recipe.id, id))
		if (tx.select().from(recipe).where(namesake).all().length > 0) return { ok: false, why: 'name taken' }
		if (of === null)
			tx.insert(recipe)
				.values({ id, ...fields })
				.run()
		else if (tx.update(recipe).set(fields).where(eq(recipe.id, of)).run().changes === 0) return hidden
		keepLines(tx, id, lines, stamp)
		const act = of === null ? 'recipe added' : 'recipe changed'
		append(tx, stamp, viewer, { act, object: `recipe ${id}`, client: null })
		return { ok: true, id }
	})
}
