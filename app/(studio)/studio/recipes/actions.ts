'use server'
import { viewer } from '@/app/server/sign-in/session'
import { stamp } from '@/app/server/start/clock'
import { isDenied, refused, studioAction } from '@/app/server/studio/studio-action'
import { readLibrary } from '@/db/catalogue/library'
import { saveRecipe as keepRecipe } from '@/db/catalogue/recipes'
import { recipeForm } from '@/lib/forms/catalogue/recipe-form'
import { rowFields } from '@/lib/forms/catalogue/recipe-lines'

const card = (recipe: unknown, more: Record<string, string> = {}) =>
	`/studio/recipes/card?${new URLSearchParams({ ...(recipe !== '' && { recipe: String(recipe) }), ...more })}`

/** A line's usual role, holding and way follow its material, so the catalogue is read first. */
export async function saveRecipe(form: FormData): Promise<void> {
	const known = (await readLibrary(await viewer()))?.materials ?? new Map()
	await studioAction(
		form,
		{
			act: 'change the catalogue',
			schema: recipeForm(known),
			lists: [...rowFields, 'remove'],
			page: ({ recipe }) => card(recipe ?? ''),
		},
		async (who, { once, recipe, ...fields }) => {
			const saved = await keepRecipe(who, recipe, fields, stamp(once))
			if (saved.ok) return { to: card(saved.id, { kept: 'yes' }) }
			if (isDenied(saved)) return refused(saved)
			return { errors: { name: 'Another recipe has this name.' } }
		},
	)
}
