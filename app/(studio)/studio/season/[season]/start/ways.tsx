import { list } from '@/lib/format/words'
import type { Source, Sources } from '@/lib/proposal/start/sources'
import { seasonName } from '@/lib/season/season'
import { Way } from './way'

const counts = [
	{ value: '1', label: 'the design that fits best' },
	{ value: '2', label: 'the best two' },
	{ value: '3', label: 'the best three' },
]
const earlierLabel = ({ season, palette }: Source) => `${seasonName(season)}: ${palette}`
const otherLabel = ({ name, season, palette }: Source) => `${name}, ${seasonName(season)}: ${palette}`
const named = (all: readonly Source[], label: (source: Source) => string) =>
	all.map((source) => ({ value: source.proposal, label: label(source) }))

/** Whatever it starts from, it is grown to this client's containers and held against their wall. */
export function Ways({
	sources: { client, season, designs, earlier, others, recipes },
}: {
	readonly sources: Sources
}) {
	const whose = { client: client.id, season: season.id }
	return (
		<>
			<p className="mt-2 max-w-2xl text-lg text-soft">
				Whatever you choose is grown to the containers of {client.name} and held against their wall. Dates, prices and
				letters of then stay where they are.
			</p>
			<div className="mt-4 grid gap-x-14 lg:grid-cols-2">
				<Way
					{...whose}
					from="earlier"
					title="An earlier season of theirs"
					says="What was approved then, or all that was offered."
					label="Which season"
					choices={named(earlier, earlierLabel)}
					none="They have had no proposal yet."
					does="Start as then"
				/>
				<Way
					{...whose}
					from="collection"
					title="The collection"
					says={designs.length > 0 ? `${list(designs)}.` : ''}
					label="How many designs"
					choices={designs.length > 0 ? counts : []}
					none="The season has no house designs yet."
					does="Start from the collection"
				/>
				<Way
					{...whose}
					from="another"
					title="Another client’s"
					says="Their palettes and what goes with them; nothing that is theirs alone."
					label="Whose proposal"
					choices={named(others, otherLabel)}
					none="Nobody else has a proposal with palettes."
					does="Start as theirs"
				/>
				<Way
					{...whose}
					from="recipe"
					title="A recipe of the library"
					says="One palette, in the recipe’s own colours."
					label="Which recipe"
					choices={recipes.map(({ id, name }) => ({ value: id, label: name }))}
					none="The library has no recipe for this season."
					does="Start from the recipe"
				/>
			</div>
		</>
	)
}
