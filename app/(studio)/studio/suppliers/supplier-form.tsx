import { v7 } from 'uuid'
import { ErrorSummary } from '@/app/ui/error-summary'
import { TextField, WordsField } from '@/app/ui/field'
import { one } from '@/app/ui/studio/settings-fields'
import type { Attempt } from '@/lib/forms/read'
import { saveSupplier } from './actions'

type Supplier = { readonly id: string; readonly name: string; readonly leadDays: number; readonly note: string }
type Props = { readonly supplier: Supplier | undefined; readonly attempt: Attempt }

const labels = { name: 'Name', leadDays: 'Days from order to door', note: 'Note for the studio' }

/** A new supplier, or one of the list changed. */
export function SupplierForm({ supplier, attempt: { typed: tried, errors } }: Props) {
	const saved = { name: supplier?.name ?? '', leadDays: String(supplier?.leadDays ?? 7), note: supplier?.note ?? '' }
	const typed = { ...saved, ...tried }
	return (
		<form action={saveSupplier} noValidate aria-labelledby="which">
			<h2 id="which" className="text-xl">
				{supplier === undefined ? 'Add a supplier' : `Change ${supplier.name}`}
			</h2>
			<ErrorSummary errors={errors} labels={labels} />
			<input type="hidden" name="once" value={v7()} />
			<input type="hidden" name="supplier" value={supplier?.id ?? ''} />
			<TextField name="name" label={labels.name} value={one(typed, 'name')} error={errors.name} />
			<TextField
				name="leadDays"
				label={labels.leadDays}
				inputMode="numeric"
				value={one(typed, 'leadDays')}
				error={errors.leadDays}
			/>
			<WordsField name="note" label={labels.note} value={one(typed, 'note')} error={errors.note} />
			<p className="mt-6 flex flex-wrap items-center gap-x-5">
				<button type="submit" className="act first">
					Save the supplier
				</button>
				{supplier && <a href="/studio/suppliers">Add another instead</a>}
			</p>
		</form>
	)
}
