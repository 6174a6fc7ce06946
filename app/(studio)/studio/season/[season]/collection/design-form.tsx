import { v7 } from 'uuid'
import { ErrorSummary } from '@/app/ui/error-summary'
import { ChoiceField, TextField } from '@/app/ui/field'
import { one } from '@/app/ui/studio/settings-fields'
import type { Attempt, Typed } from '@/lib/forms/read'
import { mostColours } from '@/lib/season/collection/collection'
import type { CollectionPage } from '@/lib/season/collection/pages'
import { saveDesign } from './actions'
import { ColourRows } from './colour-rows'
import { KeepOrDrop } from './keep-or-drop'

const labels = {
	name: 'Name of the design',
	pot: 'Recipe for pots and urns',
	box: 'Recipe for boxes and troughs',
	bowl: 'Recipe for bowls',
}
const blank = '#7a8b6f'

function savedText({ collection }: CollectionPage, which: string): Typed {
	const design = collection.designs.find(({ key }) => key === which)
	if (design === undefined) return { design: '', colour: [], hex: [] }
	const { key, name, palette, recipes } = design
	return {
		design: key,
		name,
		colour: palette.map((each) => each.name),
		hex: palette.map((each) => each.hex),
		pot: recipes.pot ?? '',
		box: recipes.box ?? '',
		bowl: recipes.bowl ?? '',
	}
}

type Props = { readonly page: CollectionPage; readonly which: string; readonly attempt: Attempt }

/** One house design: its name, its colours, and the recipe for each way that a container is planted. */
export function DesignForm({ page, which, attempt: { typed: tried, errors } }: Props) {
	const { season, version, recipes } = page
	const typed = { ...savedText(page, which), ...tried }
	const ours = recipes.filter(({ isOfSeason }) => isOfSeason)
	const chosen = (none: string) => [
		{ value: '', label: none },
		...ours.map(({ id, name }) => ({ value: id, label: name })),
	]
	const isNew = one(typed, 'design') === ''
	return (
		<form key={JSON.stringify(typed)} action={saveDesign} className="max-w-2xl" noValidate>
			<h1 className="mt-1 text-4xl font-extrabold tracking-tight">
				{isNew ? 'Add a design' : one(typed, 'name') || 'A design'}
			</h1>
			<ErrorSummary errors={errors} labels={labels} />
			<input type="hidden" name="once" value={v7()} />
			<input type="hidden" name="season" value={season.id} />
			<input type="hidden" name="version" value={version} />
			<input type="hidden" name="design" value={one(typed, 'design')} />
			<TextField name="name" label={labels.name} value={one(typed, 'name')} error={errors.name} />
			<ColourRows
				names={[typed.colour ?? []].flat()}
				hexes={[typed.hex ?? []].flat()}
				rows={mostColours}
				blank={blank}
				errors={errors}
			/>
			<ChoiceField
				name="pot"
				label={labels.pot}
				value={one(typed, 'pot')}
				choices={chosen('Choose a recipe…')}
				error={errors.pot}
			/>
			<ChoiceField
				name="box"
				label={labels.box}
				value={one(typed, 'box')}
				choices={chosen('the same as for pots')}
				error={errors.box}
			/>
			<ChoiceField
				name="bowl"
				label={labels.bowl}
				value={one(typed, 'bowl')}
				choices={chosen('the same as for pots')}
				error={errors.bowl}
			/>
			<KeepOrDrop keep="Save the design" drop="Remove the design" isNew={isNew} />
		</form>
	)
}
