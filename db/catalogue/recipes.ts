import { and, eq, ne } from 'drizzle-orm'
import type { Viewer } from '@/lib/access/viewer'
import type { Holding, Role } from '@/lib/recipe/material'
import type { Quarter } from '@/lib/season/season'
import type { Id, MaterialId } from '@/lib/units/id'
import { type Tx, write } from '../open'
import { append } from '../record/append'
import { recipe, recipeLine } from '../schema'
import type { Stamp } from '../stamp'
import { type Denied, denied, hidden } from '../viewer'

export type RecipeFields = {
	readonly name: string
	readonly quarter: Quarter
	readonly note: string
	/** Counts for the reference container, in units of the material. */
	readonly lines: readonly {
		readonly material: MaterialId
		readonly role: Role
		readonly holding: Holding
		readonly count: number
	}[]
}
export type SavedRecipe =
	| { readonly ok: true; readonly id: Id<'recipe'> }
	| { readonly ok: false; readonly why: 'name taken' }
	| Denied

function keepLines(tx: Tx, recipeId: Id<'recipe'>, lines: RecipeFields['lines'], stamp: Stamp): void {
	tx.delete(recipeLine).where(eq(recipeLine.recipeId, recipeId)).run()
	for (const [position, { material: materialId, ...line }] of lines.entries())
		tx.insert(recipeLine)
			.values({ id: stamp.id<'recipe line'>(), recipeId, position, materialId, ...line })
			.run()
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
