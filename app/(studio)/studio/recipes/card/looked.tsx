import { recipePicture } from '@/lib/forms/pictures/recipe-picture'
import { describeScene } from '@/lib/picture/words/describe-scene'
import { plannedIn } from '@/lib/recipe/library/grown-to'
import { inReference } from '@/lib/recipe/library/in-reference'
import type { Library } from '@/lib/recipe/library/library'
import { recipeScene } from '@/lib/recipe/library/scene'
import { summary } from '@/lib/recipe/summary'

type Props = { readonly recipe: Library['recipes'][number]; readonly library: Library }

/** The recipe in the container that it is written for: its picture, what one would tell a neighbour, and the checks. */
export function Looked({ recipe, library: { materials, lengths } }: Props) {
	const planted = plannedIn('reference', recipe.lines, materials)
	const { says, hazards } = summary(planted)
	const findings = inReference(planted, recipe.quarter, lengths)
	return (
		<section className="mt-6 grid items-start gap-x-10 gap-y-4 md:grid-cols-[22rem_1fr]" aria-labelledby="looked">
			<img
				src={recipePicture(recipe.id, { pot: 'reference', cut: 'phone' })}
				alt={describeScene(recipeScene(recipe, 'reference', materials, lengths), lengths)}
				width="630"
				height="600"
				className="block h-auto w-full bg-line"
			/>
			<div>
				<h2 id="looked" className="text-xl">
					In the pot that it is written for
				</h2>
				<p className="mt-1">{says}</p>
				{hazards && <p className="mt-1">{hazards}</p>}
				<ul className="mt-3">
					{findings.map(({ key, says: found, mend, weight }) => (
						<li key={key} className="border-t border-line py-2">
							<span className={weight === 'look again' ? 'font-semibold text-warn' : 'font-semibold'}>{found}</span>{' '}
							{mend}
						</li>
					))}
				</ul>
				{findings.length === 0 && <p className="mt-3">The checks find nothing.</p>}
				<p className="mt-2 text-sm text-soft">
					Wall, light, cold and wind are looked at when the recipe stands at a client’s.
				</p>
			</div>
		</section>
	)
}
