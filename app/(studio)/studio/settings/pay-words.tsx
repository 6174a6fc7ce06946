import { v7 } from 'uuid'
import { ErrorSummary } from '@/app/ui/error-summary'
import { WordsField } from '@/app/ui/field'
import { one } from '@/app/ui/studio/settings-fields'
import type { Attempt } from '@/lib/forms/read'
import { savePayWords } from './actions'

type Props = { readonly words: string; readonly attempt: Attempt }

/** Where and how to pay: it stands on every invoice, and begins the asking by itself. */
export function PayWords({ words, attempt: { typed, errors } }: Props) {
	return (
		<section id="pay" className="mt-14 max-w-xl" aria-labelledby="how-to-pay">
			<h2 id="how-to-pay" className="text-2xl">
				How you are paid
			</h2>
			<form action={savePayWords} noValidate>
				<ErrorSummary errors={errors} />
				<input type="hidden" name="once" value={v7()} />
				<WordsField
					name="payWords"
					label="Where and how to pay"
					hint="Stands on every invoice. From the day on which you first say it, what falls due is asked for by itself. Taxes and wording are for your accountant to look at."
					value={one(typed, 'payWords') || words}
					error={errors.payWords}
					rows={4}
				/>
				<button type="submit" className="act mt-5">
					Save how you are paid
				</button>
			</form>
		</section>
	)
}
