import { v7 } from 'uuid'
import { TextField } from '@/app/ui/field'
import type { Attempt } from '@/lib/forms/read'
import { undo } from './actions'

type Props = { readonly client: string; readonly entry: string; readonly attempt: Attempt }

/** A line that was a mistake is undone with a reason; both stay. */
export function Undo({ client, entry, attempt: { typed, errors } }: Props) {
	const isTried = typed.entry === entry
	return (
		<details className="no-print" open={isTried}>
			<summary className="does inline-flex items-center text-sm text-soft">Undo</summary>
			<form action={undo} className="flex flex-wrap items-end gap-3" noValidate>
				<input type="hidden" name="once" value={v7()} />
				<input type="hidden" name="client" value={client} />
				<input type="hidden" name="entry" value={entry} />
				<div className="grow">
					<TextField
						id={`undo-${entry}`}
						name="reason"
						label="Why"
						value={isTried && typeof typed.reason === 'string' ? typed.reason : ''}
						error={isTried ? errors.reason : undefined}
					/>
				</div>
				<button type="submit" className="does">
					Undo it
				</button>
			</form>
		</details>
	)
}
