import { ChoiceField, described, Field, TickField } from '@/app/ui/field'
import { one } from '@/app/ui/studio/settings-fields'
import { type RateField, rateChoices, rateTable, rateTicks } from '@/lib/forms/rates/rate-table'
import type { FieldErrors, Typed } from '@/lib/forms/read'

type Props = {
	readonly texts: Typed
	/** The rates that stand, to tell which number is another. */
	readonly stands: Readonly<Record<string, string>>
	readonly errors: FieldErrors
}

function NumberField({
	field: { at, label, unit },
	value,
	was,
	error,
}: {
	readonly field: RateField
	readonly value: string
	readonly was: string
	readonly error: string | undefined
}) {
	const hint = value === was ? undefined : `It stands at ${was}.`
	return (
		<Field name={at} label={label} hint={hint} error={error}>
			<span className="flex items-center gap-2">
				<input
					className="box w-32 text-end tabular-nums"
					inputMode="decimal"
					defaultValue={value}
					autoComplete="off"
					{...described({ name: at, hint, error })}
				/>
				<span className="text-soft">{unit}</span>
			</span>
		</Field>
	)
}

/** Every number of the rates in its group, with what it stands at where another is typed. */
export function RateFields({ texts, stands, errors }: Props) {
	return (
		<div className="mt-8 max-w-5xl">
			{rateTable.map(({ title, says, fields }) => (
				<fieldset key={title} className="mt-8 border-t border-line pt-4">
					<legend className="float-left text-xl font-bold">{title}</legend>
					<p className="clear-both text-soft">{says}</p>
					<div className="grid gap-x-8 sm:grid-cols-2 lg:grid-cols-3">
						{fields.map((field) => (
							<NumberField
								key={field.at}
								field={field}
								value={one(texts, field.at)}
								was={stands[field.at] ?? ''}
								error={errors[field.at]}
							/>
						))}
					</div>
				</fieldset>
			))}
			<fieldset className="mt-8 border-t border-line pt-4">
				<legend className="float-left text-xl font-bold">Sales tax</legend>
				<p className="clear-both text-soft">
					Which parts of a job are taxed where you work is your accountant’s to say. The rate itself stands with each
					place.
				</p>
				{rateTicks.map(({ at, label }) => (
					<TickField key={at} name={at} label={label} isTicked={one(texts, at) === 'on'} />
				))}
				<div className="grid gap-x-8 sm:grid-cols-2">
					{rateChoices.map(({ at, label, choices }) => (
						<ChoiceField
							key={at}
							name={at}
							label={label}
							value={one(texts, at)}
							choices={choices.map((value) => ({ value, label: value }))}
							error={errors[at]}
						/>
					))}
				</div>
			</fieldset>
		</div>
	)
}
