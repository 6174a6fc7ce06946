import { v7 } from 'uuid'
import { ErrorSummary } from '@/app/ui/error-summary'
import { ChoiceField, TextField } from '@/app/ui/field'
import { one } from '@/app/ui/studio/settings-fields'
import type { Attempt } from '@/lib/forms/read'
import { quarters } from '@/lib/season/season'
import { plan } from './actions'

const labels = {
	quarter: 'Season',
	year: 'Year in which it begins',
	answerBy: 'Answer by',
	windowFrom: 'Goes in from',
	windowTo: 'Goes in until',
}

export function PlanSeason({ attempt: { typed, errors } }: { readonly attempt: Attempt }) {
	return (
		<form key={JSON.stringify(typed)} action={plan} className="max-w-lg" noValidate>
			<h1 className="text-4xl">Plan a season</h1>
			<p className="mt-2 text-soft">Its dates are where every proposal of the season begins.</p>
			<ErrorSummary errors={errors} labels={labels} />
			<input type="hidden" name="once" value={v7()} />
			<ChoiceField
				name="quarter"
				label={labels.quarter}
				value={one(typed, 'quarter') || 'winter'}
				choices={quarters.map((value) => ({ value, label: value }))}
				error={errors.quarter}
			/>
			<TextField name="year" label={labels.year} inputMode="numeric" value={one(typed, 'year')} error={errors.year} />
			<TextField
				name="answerBy"
				label={labels.answerBy}
				type="date"
				value={one(typed, 'answerBy')}
				error={errors.answerBy}
			/>
			<TextField
				name="windowFrom"
				label={labels.windowFrom}
				type="date"
				value={one(typed, 'windowFrom')}
				error={errors.windowFrom}
			/>
			<TextField
				name="windowTo"
				label={labels.windowTo}
				type="date"
				value={one(typed, 'windowTo')}
				error={errors.windowTo}
			/>
			<button type="submit" className="act first mt-8">
				Plan this season
			</button>
		</form>
	)
}
