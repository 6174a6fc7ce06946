import { v7 } from 'uuid'
import { undo } from './actions'

type Props = { readonly client: string; readonly entry: string }

/** A line that was a mistake is undone with a reason; both stay. */
export function Undo({ client, entry }: Props) {
	return (
		<details className="no-print">
			<summary className="does inline-flex items-center text-sm text-soft">Undo</summary>
			<form action={undo} className="flex flex-wrap items-end gap-3" noValidate>
				<input type="hidden" name="once" value={v7()} />
				<input type="hidden" name="client" value={client} />
				<input type="hidden" name="entry" value={entry} />
				<label className="block grow text-sm">
					Why
					<input className="box small" name="reason" autoComplete="off" />
				</label>
				<button type="submit" className="does">
					Undo it
				</button>
			</form>
		</details>
	)
}
