import { v7 } from 'uuid'
import { ErrorSummary } from '@/app/ui/error-summary'
import { ChoiceField, TextField } from '@/app/ui/field'
import { one } from '@/app/ui/studio/settings-fields'
import type { OnDesk } from '@/lib/agreement/studio/shown'
import type { Attempt } from '@/lib/forms/read'
import { endAgreement } from '../actions'

type Props = { readonly desk: OnDesk; readonly attempt: Attempt; readonly outlook: readonly string[] | undefined }

const sides = [
	{ value: 'client', label: 'the client' },
	{ value: 'studio', label: 'we do' },
]

/** Ends early what holds: first what that leaves between the two is shown, then it can be done. */
export function EndingForm({ desk: { row, today }, attempt, outlook }: Props) {
	const isTried = 'saidOn' in attempt.typed
	const { typed, errors } = isTried ? attempt : { typed: {}, errors: {} }
	return (
		<details className="mt-8 max-w-3xl" open={isTried}>
			<summary className="does inline-block">End it early</summary>
			<form action={endAgreement} noValidate key={JSON.stringify(typed)}>
				<ErrorSummary errors={errors} />
				<input type="hidden" name="once" value={v7()} />
				<input type="hidden" name="agreement" value={row.id} />
				<div className="grid gap-x-6 sm:grid-cols-2">
					<TextField name="on" label="Its last day" type="date" value={one(typed, 'on') || today} error={errors.on} />
					<TextField
						name="saidOn"
						label="Said on"
						type="date"
						value={one(typed, 'saidOn') || today}
						error={errors.saidOn}
					/>
					<ChoiceField
						name="by"
						label="Who ends it"
						value={one(typed, 'by') || 'client'}
						choices={sides}
						error={errors.by}
					/>
				</div>
				<TextField name="reason" label="Why" value={one(typed, 'reason')} error={errors.reason} />
				{outlook && (
					<div className="said mt-5" role="status">
						{outlook.map((says) => (
							<p key={says} className="mt-1">
								{says}
							</p>
						))}
					</div>
				)}
				<p className="mt-5 flex flex-wrap gap-3">
					<button type="submit" name="step" value="see" className="act">
						See what remains due
					</button>
					{outlook && (
						<button type="submit" name="step" value="end" className="act first">
							End the agreement
						</button>
					)}
				</p>
			</form>
		</details>
	)
}
