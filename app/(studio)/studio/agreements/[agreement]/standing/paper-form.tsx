import { v7 } from 'uuid'
import { ErrorSummary } from '@/app/ui/error-summary'
import { TextField } from '@/app/ui/field'
import { one } from '@/app/ui/studio/settings-fields'
import type { OnDesk } from '@/lib/agreement/studio/shown'
import type { Attempt } from '@/lib/forms/read'

type Props = { readonly desk: OnDesk; readonly attempt: Attempt }

/** What was signed on paper: by whom, on which day, and a picture of it. */
export function PaperForm({ desk: { row, today }, attempt }: Props) {
	const isTried = 'signer' in attempt.typed
	const { typed, errors } = isTried ? attempt : { typed: {}, errors: {} }
	return (
		<details className="mt-8 max-w-3xl" open={isTried}>
			<summary className="does inline-block">They signed on paper</summary>
			<form method="post" encType="multipart/form-data" action={`/studio/agreements/${row.id}/paper`}>
				<ErrorSummary errors={errors} />
				<p className="mt-2">
					It is kept as your word, with a picture of the paper: as signed on paper, never as signed on a screen. Both
					sides are told.
				</p>
				<input type="hidden" name="once" value={v7()} />
				<input type="hidden" name="agreement" value={row.id} />
				<input type="hidden" name="document" value={row.issued ?? ''} />
				<TextField name="signer" label="Who signed" value={one(typed, 'signer')} error={errors.signer} />
				<TextField
					name="signedOn"
					label="On which day"
					type="date"
					value={one(typed, 'signedOn') || today}
					error={errors.signedOn}
				/>
				<div className="mt-5">
					<label htmlFor="scan" className="block font-semibold">
						A picture of the signed page
					</label>
					{errors.scan && (
						<p id="scan-error" className="mt-1 font-semibold text-warn">
							{errors.scan}
						</p>
					)}
					<input
						type="file"
						id="scan"
						name="scan"
						accept="image/jpeg,image/png,image/webp"
						className="box mt-1.5"
						aria-invalid={errors.scan ? true : undefined}
						aria-describedby={errors.scan ? 'scan-error' : undefined}
					/>
				</div>
				<button type="submit" className="act mt-5">
					Keep the paper signature
				</button>
			</form>
		</details>
	)
}
