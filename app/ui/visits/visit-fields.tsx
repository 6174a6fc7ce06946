import { ChoiceField, TextField, TickField, WordsField } from '@/app/ui/field'
import { capital } from '@/lib/format/words'
import type { Attempt } from '@/lib/forms/read'
import { mostPhotos } from '@/lib/visit/photo'
import { visitKinds } from '@/lib/visit/visit'
import { PhotoField } from './photo-field'

export const visitLabels = {
	day: 'Day',
	kind: 'Kind of visit',
	place: 'Place',
	came: 'Who came',
	clientNote: 'Note for the client',
	studioNote: 'Note for the studio',
	before: 'Photos before',
	after: 'Photos after',
}

type Filled = Readonly<Record<'day' | 'kind' | 'place' | 'came' | 'clientNote' | 'studioNote', string>>
type Props = {
	/** As it stands; what was typed into a form that went wrong goes before it. */
	readonly filled: Filled
	readonly attempt: Attempt
	readonly places: readonly { readonly id: string; readonly name: string }[]
	/** Whether the client is to hear of a visit that is written down as made. */
	readonly tells: boolean
}

const kinds = visitKinds.map((kind) => ({ value: kind, label: capital(kind) }))

/** What is written about a visit. */
export function VisitFields({ filled, attempt: { typed, errors }, places, tells }: Props) {
	const isBack = 'kind' in typed
	const at = (name: keyof Filled) => {
		const was = typed[name]
		return { name, label: visitLabels[name], error: errors[name], value: typeof was === 'string' ? was : filled[name] }
	}
	const where = [...places.map(({ id, name }) => ({ value: id, label: name })), { value: '', label: 'All places' }]
	return (
		<>
			<div className="grid gap-x-6 sm:grid-cols-2">
				<TextField {...at('day')} type="date" />
				<ChoiceField {...at('kind')} choices={kinds} />
				<ChoiceField {...at('place')} choices={where} />
				<TextField {...at('came')} />
			</div>
			<WordsField {...at('clientNote')} hint="They read it with the visit, and in the mail about it." />
			<WordsField {...at('studioNote')} rows={2} hint="Never shown to the client." />
			<div className="grid gap-x-6 sm:grid-cols-2">
				<PhotoField name="before" label={visitLabels.before} most={mostPhotos.visit} error={errors.before} />
				<PhotoField name="after" label={visitLabels.after} most={mostPhotos.visit} error={errors.after} />
			</div>
			<TickField
				name="tell"
				label="Once it is made, tell the client by mail"
				isTicked={isBack ? typed.tell === 'on' : tells}
			/>
		</>
	)
}
