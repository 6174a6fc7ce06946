import type { Metadata } from 'next'
import { hide } from '@/app/server/refusal'
import { studioPage } from '@/app/server/studio/studio-page'
import { SeasonMark } from '@/app/ui/marks/season-mark'
import { StudioFrame } from '@/app/ui/studio/studio-frame'
import { readLibrary } from '@/db/catalogue/library'
import { capital } from '@/lib/format/words'
import { recipePicture } from '@/lib/forms/pictures/recipe-picture'
import { countsInWords } from '@/lib/recipe/library/counts-in-words'
import { plannedIn } from '@/lib/recipe/library/grown-to'
import type { Library } from '@/lib/recipe/library/library'
import { summary } from '@/lib/recipe/summary'
import { quarters } from '@/lib/season/season'

export const metadata: Metadata = { title: 'Recipes' }

type RowProps = { readonly recipe: Library['recipes'][number]; readonly materials: Library['materials'] }

function Row({ recipe: { id, name, lines }, materials }: RowProps) {
	const planted = plannedIn('reference', lines, materials)
	const { says, hazards } = summary(planted)
	return (
		<li className="grid grid-cols-[6rem_1fr] items-start gap-x-5 gap-y-1 border-t border-line py-4 sm:grid-cols-[8.5rem_1fr]">
			<img
				src={recipePicture(id, { pot: 'reference', cut: 'thumbnail' })}
				alt=""
				width="136"
				height="107"
				loading="lazy"
				className="row-span-2 block h-auto w-full bg-line"
			/>
			<div className="max-w-3xl">
				<a href={`/studio/recipes/card?recipe=${id}`} className="text-lg font-bold">
					{name}
				</a>
				<p>{says}</p>
				<p className="text-soft">{capital(countsInWords(planted))}.</p>
				{hazards && <p className="text-sm">{hazards}</p>}
			</div>
		</li>
	)
}

/** The library by season: each recipe as it stands in the container that recipes are written for. */
export default async function Recipes() {
	const { who, frame } = await studioPage('/studio/recipes', 'see the catalogue')
	const library = await readLibrary(who)
	if (library === undefined) hide(who)
	const { recipes, materials } = library
	return (
		<StudioFrame {...frame} here="Recipes">
			<div className="flex flex-wrap items-baseline justify-between gap-4">
				<h1 className="text-4xl font-extrabold tracking-tight">Recipes</h1>
				<a className="act" href="/studio/recipes/card">
					Write a recipe
				</a>
			</div>
			{quarters
				.filter((quarter) => recipes.some((recipe) => recipe.quarter === quarter))
				.map((quarter) => (
					<section key={quarter} className="mt-8" aria-labelledby={quarter} data-season={quarter}>
						<h2 id={quarter} className="mb-2 flex items-center gap-3 text-xl">
							<SeasonMark quarter={quarter} />
							{capital(quarter)}
						</h2>
						<ul>
							{recipes
								.filter((recipe) => recipe.quarter === quarter)
								.map((recipe) => (
									<Row key={recipe.id} recipe={recipe} materials={materials} />
								))}
						</ul>
					</section>
				))}
			{recipes.length === 0 && (
				<p className="mt-4">
					Nothing yet. A recipe is written once, for one round pot, and grows to every container of a proposal.
				</p>
			)}
		</StudioFrame>
	)
}
