import { ChoiceField, TextField } from '@/app/ui/field'
import type { RenewalAsk } from '@/lib/agreement/studio/form/renew-form'

const ways = [
	{ value: 'percent', label: 'per cent' },
	{ value: 'amount', label: 'an amount each season' },
]
const steps = [
	{ value: '1', label: 'to the cent' },
	{ value: '100', label: 'to whole ones' },
	{ value: '500', label: 'to fives' },
	{ value: '1000', label: 'to tens' },
]

/** By how much the prices change, asked in the address of the page: nothing is kept. */
export function Ask({ ask, year }: { readonly ask: RenewalAsk; readonly year: number }) {
	return (
		<form className="grid max-w-4xl items-end gap-x-6 sm:grid-cols-5" action="/studio/agreements/renew">
			<TextField name="year" label="That end in" inputMode="numeric" value={String(year)} />
			<TextField name="rise" label="Prices change by" inputMode="decimal" value={ask.rise} />
			<ChoiceField name="by" label="In" value={ask.by} choices={ways} />
			<ChoiceField name="step" label="Rounded" value={ask.step} choices={steps} />
			<button type="submit" className="act mt-5">
				Work it out
			</button>
		</form>
	)
}
