import { v7 } from 'uuid'
import { ErrorSummary } from '@/app/ui/error-summary'
import { TextField, WordsField } from '@/app/ui/field'
import { one } from '@/app/ui/studio/settings-fields'
import type { Attempt } from '@/lib/forms/read'
import type { CollectionPage } from '@/lib/season/collection/pages'
import { saveCollectionWords } from './actions'

const labels = { title: 'Title of each proposal', letter: 'Letter' }

type Props = { readonly page: CollectionPage; readonly attempt: Attempt }

/** The words that every proposal made from the collection begins with. */
export function WordsForm({ page: { season, version, collection }, attempt }: Props) {
	const typed = { title: collection.title, letter: collection.letter, ...attempt.typed }
	const { errors } = attempt
	return (
		<form key={JSON.stringify(typed)} action={saveCollectionWords} className="mt-10 max-w-2xl" noValidate>
			<h2 className="text-xl">Title and letter</h2>
			<ErrorSummary errors={errors} labels={labels} />
			<input type="hidden" name="once" value={v7()} />
			<input type="hidden" name="season" value={season.id} />
			<input type="hidden" name="version" value={version} />
			<TextField name="title" label={labels.title} value={one(typed, 'title')} error={errors.title} />
			<WordsField
				name="letter"
				label={labels.letter}
				hint="Each draft begins with it; tune it for a client in the draft."
				rows={7}
				value={one(typed, 'letter')}
				error={errors.letter}
			/>
			<button type="submit" className="act first mt-6">
				Save title and letter
			</button>
		</form>
	)
}
