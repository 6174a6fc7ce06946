import { v7 } from 'uuid'
import { ErrorSummary } from '@/app/ui/error-summary'
import { VisitFields, visitLabels } from '@/app/ui/visits/visit-fields'
import type { Attempt } from '@/lib/forms/read'
import type { Day } from '@/lib/units/day'
import { photoAddress } from '@/lib/visit/photo'
import type { NamedPlace, StudioVisit, VisitPhoto } from '@/lib/visit/shown'
import { sideWord } from '@/lib/visit/words'

type Props = {
	readonly page: { readonly visit: StudioVisit; readonly places: readonly NamedPlace[]; readonly today: Day }
	readonly attempt: Attempt
	readonly me: string
}
type State = StudioVisit['state']

const acts: Readonly<Record<State, readonly (readonly [step: string, label: string])[]>> = {
	'to plan': [
		['plan', 'Plan it for this day'],
		['record', 'It was made: write it down'],
		['drop', 'No visit is needed: drop it'],
	],
	planned: [
		['record', 'It was made: write it down'],
		['plan', 'Plan it for this day'],
		['drop', 'Drop it'],
	],
	done: [['record', 'Put it right']],
	dropped: [['plan', 'Plan it after all']],
}

/** One form for every step; which it is, the button says. A made visit is put right in a form that is folded away. */
export function RecordForm({ page, attempt, me }: Props) {
	const { state } = page.visit
	if (state !== 'done') return <Form page={page} attempt={attempt} me={me} />
	return (
		<details className="mt-8" open={'kind' in attempt.typed}>
			<summary className="act">Put right what is written</summary>
			<Form page={page} attempt={attempt} me={me} />
		</details>
	)
}

function Form({ page: { visit, places, today }, attempt, me }: Props) {
	const { id, state, kind, place, clientNote, studioNote } = visit
	const day = visit.day ?? (state === 'to plan' ? '' : today)
	const came = visit.came === '' ? me : visit.came
	return (
		<form method="post" encType="multipart/form-data" action={`/studio/visits/${id}/keep`} className="mt-6" id="form">
			<ErrorSummary errors={attempt.errors} labels={visitLabels} />
			<input type="hidden" name="once" value={v7()} />
			<VisitFields
				filled={{ day, kind, place: place ?? '', came, clientNote, studioNote }}
				attempt={attempt}
				places={places}
				tells={state !== 'done'}
			/>
			<TakeOut photos={visit.photos} />
			<p className="mt-8 flex flex-wrap gap-3">
				{acts[state].map(([step, label], index) => (
					<button key={step} type="submit" name="do" value={step} className={`act ${index === 0 ? 'first' : ''}`}>
						{label}
					</button>
				))}
			</p>
		</form>
	)
}

function TakeOut({ photos }: { readonly photos: readonly VisitPhoto[] }) {
	if (photos.length === 0) return null
	return (
		<fieldset className="mt-6">
			<legend className="font-semibold">Take photos out</legend>
			<div className="mt-2 flex flex-wrap gap-4">
				{photos.map(({ id, side, width, height }, index) => (
					<label key={id} className="flex min-h-11 items-center gap-2">
						<input type="checkbox" className="tick" name="out" value={id} />
						<img
							src={photoAddress(id, 'small')}
							alt={`${sideWord(side)}, ${index + 1}`}
							width={Math.round((44 * width) / height)}
							height="44"
							className="photo"
						/>
					</label>
				))}
			</div>
		</fieldset>
	)
}
