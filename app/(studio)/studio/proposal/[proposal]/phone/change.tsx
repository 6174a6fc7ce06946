import { described, Field } from '@/app/ui/field'
import type { FieldErrors } from '@/lib/forms/read'
import type { ChangePart } from '@/lib/proposal/offer/parts'
import { takeChange } from './actions'
import { attemptOf, type Of, Said } from './said'

/** What they would like to be different, beside the part that it is about. */
export function Change({ parts, of }: { readonly parts: readonly ChangePart[]; readonly of: Of }) {
	const { typed, errors } = attemptOf(of, 'change')
	const notes = [typed.note ?? []].flat()
	// What is wrong with all of them stands beside the first.
	const { note, ...each } = errors
	const wrong: FieldErrors = note === undefined ? each : { ...each, 'note.0': note }
	return (
		<section aria-labelledby="change">
			<h2 id="change" className="text-2xl">
				They ask for a change
			</h2>
			<form action={takeChange} noValidate>
				<Said of={of} kind="change" errors={wrong} />
				{parts.map(({ key, name }, index) => {
					const field = { name: `note.${index}`, error: wrong[`note.${index}`] }
					return (
						<Field key={key} label={name} {...field}>
							<input type="hidden" name="about" value={key} />
							<textarea
								{...described(field)}
								name="note"
								rows={key === 'whole' ? 3 : 1}
								className="box"
								defaultValue={notes[index] ?? ''}
							/>
						</Field>
					)
				})}
				<button type="submit" className="act mt-5">
					Write down the change
				</button>
			</form>
		</section>
	)
}
