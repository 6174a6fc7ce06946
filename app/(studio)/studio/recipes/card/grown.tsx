import { length } from '@/lib/format/length'
import { quantity } from '@/lib/format/words'
import { recipePicture } from '@/lib/forms/pictures/recipe-picture'
import { grownTo } from '@/lib/recipe/library/grown-to'
import type { Library } from '@/lib/recipe/library/library'
import { potWords } from '@/lib/recipe/library/pots'

type Props = { readonly recipe: Library['recipes'][number]; readonly library: Library }

const named = 'border-t border-line pt-2.5'

/** What the recipe comes to in pots of other sizes and stands, line by line. */
export function Grown({ recipe, library: { materials, lengths } }: Props) {
	const grown = grownTo(recipe.lines, materials)
	return (
		<section className="mt-10 overflow-x-auto" aria-labelledby="grown">
			<h2 id="grown" className="text-xl">
				Grown to
			</h2>
			<table className="ledger mt-2 min-w-3xl">
				<thead>
					<tr className="text-sm">
						<th scope="col" className="align-bottom">
							Material
						</th>
						{grown.map(({ pot }) => (
							<th key={pot} scope="col" className="w-[15%] align-bottom">
								<img
									src={recipePicture(recipe.id, { pot, cut: 'thumbnail' })}
									alt=""
									width="150"
									height="118"
									className="mb-1 block h-auto w-36 max-w-full bg-line"
								/>
								{potWords(pot, lengths)}
							</th>
						))}
					</tr>
				</thead>
				<tbody>
					{recipe.lines.map(({ material, role }, at) => (
						<tr key={`${material} ${role}`}>
							<th scope="row" className={named}>
								<a href={`/studio/materials/card?material=${material}`} className="name">
									{materials.get(material)?.name}
								</a>
							</th>
							{grown.map(({ pot, counts }) => (
								<td key={pot}>{quantity(counts[at] ?? 0, materials.get(material)?.unit ?? 'piece')}</td>
							))}
						</tr>
					))}
					<tr>
						<th scope="row" className={named}>
							Tallest, above the rim
						</th>
						{grown.map(({ pot, tallestCm }) => (
							<td key={pot}>{tallestCm === null ? 'not known' : length(tallestCm, lengths)}</td>
						))}
					</tr>
				</tbody>
			</table>
		</section>
	)
}
