import { v7 } from 'uuid'
import { ErrorSummary } from '@/app/ui/error-summary'
import { described, Field } from '@/app/ui/field'
import { one } from '@/app/ui/studio/settings-fields'
import type { Attempt, FieldErrors } from '@/lib/forms/read'

export type Of = { readonly proposal: string; readonly revision: string; readonly attempt: Attempt }

const none: Attempt = { typed: {}, errors: {} }

type Kind = 'yes' | 'change' | 'skip'
/** A field that no other of the three forms has. */
const own: Record<Kind, string> = { yes: 'purchaseOrder', change: 'note', skip: 'why' }

/** What was typed into the form of this kind when it went wrong; nothing into the others. */
export const attemptOf = ({ attempt }: Of, kind: Kind): Attempt => (own[kind] in attempt.typed ? attempt : none)

type Props = { readonly of: Of; readonly kind: Kind; readonly errors: FieldErrors }

/** What is wrong, which revision is answered, and who said so: in each of the three forms. */
export function Said({ of, kind, errors }: Props) {
	const { said: error, ...others } = errors
	const box = `said-${kind}`
	return (
		<>
			<ErrorSummary errors={error === undefined ? others : { ...others, [box]: error }} />
			<input type="hidden" name="once" value={v7()} />
			<input type="hidden" name="proposal" value={of.proposal} />
			<input type="hidden" name="revision" value={of.revision} />
			<Field name={box} label="Who said so" hint="It stands on the receipt." error={error}>
				<input
					className="box"
					autoComplete="off"
					{...described({ name: box, hint: 'It stands on the receipt.', error })}
					name="said"
					defaultValue={one(attemptOf(of, kind).typed, 'said')}
				/>
			</Field>
		</>
	)
}
