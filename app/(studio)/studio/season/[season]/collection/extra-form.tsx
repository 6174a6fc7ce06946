import { v7 } from 'uuid'
import { ErrorSummary } from '@/app/ui/error-summary'
import { TextField } from '@/app/ui/field'
import { one } from '@/app/ui/studio/settings-fields'
import { mostLines } from '@/lib/forms/catalogue/collection-form'
import type { Attempt, Typed } from '@/lib/forms/read'
import type { CollectionPage } from '@/lib/season/collection/pages'
import { saveCollectionExtra } from './actions'
import { KeepOrDrop } from './keep-or-drop'
import { MaterialRows } from './material-rows'

const labels = {
	name: 'Name of the extra',
	words: 'In words for the client',
	minutes: 'Minutes that it takes, beside its pieces',
}

function savedText({ collection }: CollectionPage, which: string): Typed {
	const extra = collection.extras.find(({ key }) => key === which)
	if (extra === undefined) return { extra: '', minutes: '0', material: [], count: [], holding: [] }
	const { key, name, words, minutes, lines } = extra
	return {
		...{ extra: key, name, words, minutes: String(minutes) },
		material: lines.map(({ material, role }) => `${material} ${role}`),
		count: lines.map(({ count }) => String(count.value)),
		holding: lines.map(({ holding }) => holding),
	}
}

type Props = { readonly page: CollectionPage; readonly which: string; readonly attempt: Attempt }

/** A thing that every client may add, priced by what it takes. */
export function ExtraForm({ page, which, attempt: { typed: tried, errors } }: Props) {
	const { season, version, materials } = page
	const typed = { ...savedText(page, which), ...tried }
	const isNew = one(typed, 'extra') === ''
	return (
		<form key={JSON.stringify(typed)} action={saveCollectionExtra} className="max-w-2xl" noValidate>
			<h1 className="mt-1 text-4xl font-extrabold tracking-tight">
				{isNew ? 'Add an extra' : one(typed, 'name') || 'An extra'}
			</h1>
			<ErrorSummary errors={errors} labels={labels} />
			<input type="hidden" name="once" value={v7()} />
			<input type="hidden" name="season" value={season.id} />
			<input type="hidden" name="version" value={version} />
			<input type="hidden" name="extra" value={one(typed, 'extra')} />
			<TextField name="name" label={labels.name} value={one(typed, 'name')} error={errors.name} />
			<TextField name="words" label={labels.words} value={one(typed, 'words')} error={errors.words} />
			<TextField
				name="minutes"
				label={labels.minutes}
				inputMode="decimal"
				value={one(typed, 'minutes')}
				error={errors.minutes}
			/>
			<MaterialRows materials={materials} typed={typed} errors={errors} rows={mostLines} />
			<KeepOrDrop keep="Save the extra" drop="Remove the extra" isNew={isNew} />
		</form>
	)
}
