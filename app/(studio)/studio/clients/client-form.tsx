import { v7 } from 'uuid'
import { ErrorSummary } from '@/app/ui/error-summary'
import { ChoiceField, TextField, WordsField } from '@/app/ui/field'
import { one } from '@/app/ui/studio/settings-fields'
import type { Attempt, Typed } from '@/lib/forms/read'
import { saveClient } from './actions'

type Props = { readonly attempt: Attempt; readonly saved: Typed }

const labels = {
	name: 'Name',
	kind: 'Business or household',
	netDays: 'A business pays within',
	exemptCertificate: 'Tax-exempt certificate (if any)',
	exemptExpires: 'Certificate expires on',
	studioNote: 'Note for the studio',
}

/** A client's own card: who they are to the books. */
export function ClientForm({ attempt, saved }: Props) {
	const { errors } = attempt
	const typed = { ...saved, ...attempt.typed }
	return (
		<form key={JSON.stringify(attempt.typed)} action={saveClient} className="max-w-xl" noValidate>
			<ErrorSummary errors={errors} labels={labels} />
			<input type="hidden" name="once" value={v7()} />
			<input type="hidden" name="client" value={one(saved, 'client')} />
			<TextField name="name" label={labels.name} value={one(typed, 'name')} error={errors.name} />
			<ChoiceField
				name="kind"
				label={labels.kind}
				value={one(typed, 'kind') || 'business'}
				choices={[
					{ value: 'business', label: 'business' },
					{ value: 'household', label: 'household' },
				]}
				error={errors.kind}
			/>
			<ChoiceField
				name="netDays"
				label={labels.netDays}
				value={one(typed, 'netDays') || '30'}
				choices={[
					{ value: '15', label: '15 days' },
					{ value: '30', label: '30 days' },
				]}
				error={errors.netDays}
			/>
			<TextField
				name="exemptCertificate"
				label={labels.exemptCertificate}
				value={one(typed, 'exemptCertificate')}
				error={errors.exemptCertificate}
			/>
			<TextField
				name="exemptExpires"
				label={labels.exemptExpires}
				type="date"
				value={one(typed, 'exemptExpires')}
				error={errors.exemptExpires}
			/>
			<WordsField
				name="studioNote"
				label={labels.studioNote}
				hint="Never shown to the client."
				value={one(typed, 'studioNote')}
				error={errors.studioNote}
			/>
			<button type="submit" className="act first mt-8">
				Save
			</button>
		</form>
	)
}
