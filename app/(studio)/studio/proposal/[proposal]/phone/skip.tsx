import { WordsField } from '@/app/ui/field'
import { one } from '@/app/ui/studio/settings-fields'
import { type Season, seasonName } from '@/lib/season/season'
import { takeSkip } from './actions'
import { attemptOf, type Of, Said } from './said'

export function Skip({ of, season }: { readonly of: Of; readonly season: Season }) {
	const { typed, errors } = attemptOf(of, 'skip')
	return (
		<section className="mt-12" aria-labelledby="skip">
			<h2 id="skip" className="text-2xl">
				They skip {seasonName(season)}
			</h2>
			<form action={takeSkip} noValidate>
				<Said of={of} kind="skip" errors={errors} />
				<WordsField name="why" label="Why (optional)" rows={2} value={one(typed, 'why')} error={errors.why} />
				<button type="submit" className="act mt-5">
					Write down that they skip
				</button>
			</form>
		</section>
	)
}
