import type { Metadata } from 'next'
import { v7 } from 'uuid'
import { attemptFor } from '@/app/server/attempt'
import { first } from '@/app/server/pages'
import { hide } from '@/app/server/refusal'
import { studioPage } from '@/app/server/studio/studio-page'
import { ErrorSummary } from '@/app/ui/error-summary'
import { ChoiceField, TextField, WordsField } from '@/app/ui/field'
import { one } from '@/app/ui/studio/settings-fields'
import { StudioFrame } from '@/app/ui/studio/studio-frame'
import { readLibrary } from '@/db/catalogue/library'
import { recipeText, rowsIn } from '@/lib/forms/catalogue/recipe-text'
import { quarters } from '@/lib/season/season'
import { saveRecipe } from '../actions'
import { Grown } from './grown'
import { LineFields } from './line-fields'
import { Looked } from './looked'
import { labelsOf } from './words'

export const metadata: Metadata = { title: 'Recipe' }

const seasons = quarters.map((value) => ({ value, label: value }))

/** A recipe: as it stands in the reference container, grown to others, and line by line to be changed. */
export default async function RecipeCard({ searchParams }: PageProps<'/studio/recipes/card'>) {
	const { who, frame } = await studioPage('/studio/recipes/card', 'change the catalogue')
	const { recipe: wanted, form, kept } = await searchParams
	const library = await readLibrary(who)
	const recipe = library?.recipes.find(({ id }) => id === first(wanted))
	if (library === undefined || (wanted !== undefined && recipe === undefined)) hide(who)
	const { typed: tried, errors } = await attemptFor(who, form)
	const typed = { ...recipeText(recipe), ...tried }
	const rows = rowsIn(typed)
	const labels = labelsOf(rows.length)
	return (
		<StudioFrame {...frame} here="Recipes" season={recipe?.quarter}>
			<h1 className="text-4xl font-extrabold tracking-tight">{recipe?.name ?? 'Write a recipe'}</h1>
			{kept !== undefined && form === undefined && <p className="said mt-5">Kept.</p>}
			<ErrorSummary errors={errors} labels={labels} />
			{recipe && (
				<>
					<Looked recipe={recipe} library={library} />
					<Grown recipe={recipe} library={library} />
				</>
			)}
			<form key={String(form)} action={saveRecipe} className="mt-10" noValidate>
				{recipe && <h2 className="text-xl">Change it</h2>}
				<input type="hidden" name="once" value={v7()} />
				<input type="hidden" name="recipe" value={recipe?.id ?? ''} />
				<div className="grid max-w-3xl gap-x-6 sm:grid-cols-2">
					<TextField name="name" label={labels.name ?? ''} value={one(typed, 'name')} error={errors.name} />
					<ChoiceField
						name="quarter"
						label={labels.quarter ?? ''}
						value={one(typed, 'quarter')}
						choices={seasons}
						error={errors.quarter}
					/>
				</div>
				<div className="max-w-3xl">
					<WordsField
						name="note"
						label={labels.note ?? ''}
						hint="Never shown to a client."
						rows={2}
						value={one(typed, 'note')}
						error={errors.note}
					/>
				</div>
				<LineFields
					rows={rows}
					removed={[typed.remove ?? []].flat()}
					errors={errors}
					materials={[...library.materials.values()]}
				/>
				<button type="submit" className="act first mt-8">
					Save the recipe
				</button>
			</form>
		</StudioFrame>
	)
}
