'use client'
import { Does, Pick } from '../box'
import type { Known } from '../known'
import { PutBack } from '../removal/put-back'

type Props = {
	readonly recipes: Known['recipes']
	readonly of: string
	readonly option: string
	readonly canGrow: boolean
	/** Grows a recipe of the library into every container, or, with none named, what is there anew. */
	readonly onGrow: (recipe: string | null) => void
}

/** Choosing a recipe puts it into every container, grown to each; counts that are kept stay. */
export function Recipes({ recipes, of, option, canGrow, onGrow }: Props) {
	return (
		<div className="mt-3">
			<div className="flex flex-wrap items-end gap-x-4">
				<Pick label={`Put a recipe into ${of}`} value="" onChange={(recipe) => recipe !== '' && onGrow(recipe)}>
					<option value="">Choose a recipe…</option>
					{recipes.map(({ id, name }) => (
						<option key={id} value={id}>
							{name}
						</option>
					))}
				</Pick>
				{canGrow && (
					<Does onClick={() => onGrow(null)}>
						Grow it anew<span className="sr-only">, {of}</span>
					</Does>
				)}
			</div>
			<PutBack list={`options.${option}.pots`} />
		</div>
	)
}
