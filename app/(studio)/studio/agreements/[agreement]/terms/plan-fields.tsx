import { ChoiceField, TextField } from '@/app/ui/field'
import { one } from '@/app/ui/studio/settings-fields'
import type { AgreedSeason } from '@/lib/agreement/season'
import { visitsOffered } from '@/lib/agreement/studio/visits-offered'
import type { Boxes } from './season-fields'

const plans = [
	{ value: '', label: 'every season apart, as it is quoted' },
	{ value: 'per visit', label: 'with each visit' },
	{ value: 'monthly', label: 'monthly' },
	{ value: 'quarterly', label: 'quarterly' },
	{ value: 'months', label: 'every so many months' },
	{ value: 'own', label: 'on dates of its own' },
]
const starts = [
	{ value: 'first of the month', label: 'on the first of the month from this day on' },
	{ value: 'on', label: 'on this very day' },
	{ value: 'on approval', label: 'when they sign' },
]

/** How the fixed prices are paid. Boxes that belong to another choice are left alone. */
export function PlanFields({
	typed,
	errors,
	seasons,
	parts,
}: Boxes & { readonly seasons: readonly AgreedSeason[]; readonly parts: number }) {
	const dues = [
		{ value: 'day', label: 'on the day beside it' },
		{ value: 'signing', label: 'when they sign, or months later' },
		...visitsOffered(seasons),
	]
	return (
		<fieldset className="mt-8 border-t border-line pt-3">
			<legend className="float-left text-xl font-bold">How it is paid</legend>
			<div className="clear-both grid gap-x-6 sm:grid-cols-2">
				<ChoiceField
					name="plan"
					label="The fixed prices are paid"
					value={one(typed, 'plan')}
					choices={plans}
					error={errors.plan}
				/>
				<ChoiceField
					name="planStart"
					label="The first falls due"
					value={one(typed, 'planStart')}
					choices={starts}
					error={errors.planStart}
				/>
			</div>
			<div className="grid gap-x-6 sm:grid-cols-3">
				<TextField
					name="planDay"
					label="Day of the first"
					type="date"
					value={one(typed, 'planDay')}
					error={errors.planDay}
				/>
				<TextField
					name="planCount"
					label="How many instalments"
					inputMode="numeric"
					value={one(typed, 'planCount')}
					error={errors.planCount}
				/>
				<TextField
					name="planMonths"
					label="Every so many months"
					inputMode="numeric"
					value={one(typed, 'planMonths')}
					error={errors.planMonths}
				/>
			</div>
			<details className="mt-5" open={one(typed, 'plan') === 'own'}>
				<summary className="does inline-block">Dates of its own</summary>
				<p className="mt-1 text-soft">
					Shares of any measure: per cent, or the amounts. A row without a share is none.
				</p>
				{Array.from({ length: parts }, (_, index) => `part.${index}`).map((row) => (
					<div key={row} className="grid gap-x-6 sm:grid-cols-4">
						<TextField
							name={`${row}.share`}
							label="Share"
							inputMode="decimal"
							value={one(typed, `${row}.share`)}
							error={errors[`${row}.share`]}
						/>
						<ChoiceField
							name={`${row}.due`}
							label="Falls due"
							value={one(typed, `${row}.due`)}
							choices={dues}
							error={errors[`${row}.due`]}
						/>
						<TextField
							name={`${row}.day`}
							label="Day"
							type="date"
							value={one(typed, `${row}.day`)}
							error={errors[`${row}.day`]}
						/>
						<TextField
							name={`${row}.months`}
							label="Months after signing"
							inputMode="numeric"
							value={one(typed, `${row}.months`)}
							error={errors[`${row}.months`]}
						/>
					</div>
				))}
			</details>
		</fieldset>
	)
}
