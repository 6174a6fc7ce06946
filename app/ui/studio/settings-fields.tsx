import { currencyCodes } from '@/lib/format/money'
import type { FieldErrors, Typed } from '@/lib/forms/read'
import { timeZones } from '@/lib/forms/studio-forms'
import { ChoiceField, TextField } from '../field'

const same = (values: readonly string[]) => values.map((value) => ({ value, label: value.replaceAll('_', ' ') }))

export const one = (typed: Typed, name: string): string => {
	const value = typed[name]
	return typeof value === 'string' ? value : ''
}

/** Name, time zone, currency and units: the four things that the rest of the studio follows. */
export function SettingsFields({ typed, errors }: { readonly typed: Typed; readonly errors: FieldErrors }) {
	return (
		<>
			<TextField name="name" label="Name of the studio" value={one(typed, 'name')} error={errors.name} />
			<ChoiceField
				name="timeZone"
				label="Time zone"
				hint="Answer-by days and install days are days here."
				value={one(typed, 'timeZone') || 'UTC'}
				choices={same(timeZones)}
				error={errors.timeZone}
			/>
			<ChoiceField
				name="currency"
				label="Currency"
				value={one(typed, 'currency') || 'USD'}
				choices={same(currencyCodes)}
				error={errors.currency}
			/>
			<ChoiceField
				name="lengths"
				label="Measures"
				value={one(typed, 'lengths') || 'in'}
				choices={[
					{ value: 'in', label: 'inches' },
					{ value: 'cm', label: 'centimetres' },
				]}
				error={errors.lengths}
			/>
		</>
	)
}
