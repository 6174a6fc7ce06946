import { v7 } from 'uuid'
import { ErrorSummary } from '@/app/ui/error-summary'
import { described, Field, TextField } from '@/app/ui/field'
import { one } from '@/app/ui/studio/settings-fields'
import type { Attempt, FieldErrors } from '@/lib/forms/read'
import type { State } from '@/lib/proposal/state'
import { steer } from './actions'

type Step = {
	readonly step: 'withdraw' | 'reopen' | 'cancel' | 'install'
	readonly label: string
	readonly says: string
	readonly reason: 'needed' | 'optional'
	/** Whether it is said what remains due. */
	readonly isSettled?: true
}

const open: Step[] = [
	{
		step: 'withdraw',
		label: 'Take it back',
		says: 'The client hears of it by mail and can no longer answer.',
		reason: 'optional',
	},
]
const approved: Step[] = [
	{ step: 'install', label: 'It is in', says: 'The design has been installed.', reason: 'optional' },
	{
		step: 'reopen',
		label: 'Open it again',
		says: 'The approval stays in the record; a new revision will take its place. The client hears of it by mail.',
		reason: 'needed',
	},
	{
		step: 'cancel',
		label: 'Cancel it',
		says: 'The approval stays in the record; nothing goes in. The client hears of it by mail, with what remains due.',
		reason: 'needed',
		isSettled: true,
	},
]

const stepsOf = (state: State['is']): readonly Step[] => {
	if (state === 'waiting for an answer' || state === 'lapsed' || state === 'change asked for') return open
	return state === 'approved' ? approved : []
}

type Props = { readonly proposal: string; readonly state: State['is']; readonly attempt: Attempt }

/** What else the studio may do with a proposal where it stands, each with room for a reason. */
export function Steps({ proposal, state, attempt }: Props) {
	const { typed } = attempt
	const steps = stepsOf(state)
	if (steps.length === 0) return null
	return (
		<section className="mt-14 max-w-xl border-t border-line pt-5" aria-labelledby="steps">
			<h2 id="steps" className="text-lg">
				Other steps
			</h2>
			{steps.map((each) => (
				<One key={each.step} {...each} proposal={proposal} attempt={typed.step === each.step ? attempt : undefined} />
			))}
		</section>
	)
}

const none: Attempt = { typed: {}, errors: {} }

/** The reason's error by the id of its box, of which there is one a step. */
function byId({ reason, ...errors }: FieldErrors, box: string): FieldErrors {
	return reason === undefined ? errors : { ...errors, [box]: reason }
}

type OneProps = Step & { readonly proposal: string; readonly attempt: Attempt | undefined }

function One({ step, label, says, reason, isSettled, proposal, attempt }: OneProps) {
	const { typed, errors } = attempt ?? none
	const box = `reason-${step}`
	const error = errors.reason
	return (
		<details className="mt-2" open={attempt !== undefined}>
			<summary className="does inline-block">{label}</summary>
			<form action={steer} className="mt-1 mb-5">
				<ErrorSummary errors={byId(errors, box)} />
				<p className="mt-3 text-soft">{says}</p>
				<input type="hidden" name="once" value={v7()} />
				<input type="hidden" name="proposal" value={proposal} />
				<input type="hidden" name="step" value={step} />
				<Field
					name={box}
					label={`Reason, kept in the record${reason === 'optional' ? ' (optional)' : ''}`}
					error={error}
				>
					<textarea
						rows={2}
						className="box"
						defaultValue={one(typed, 'reason')}
						{...described({ name: box, error })}
						name="reason"
					/>
				</Field>
				{isSettled ? (
					<TextField
						name="remains"
						label="What remains due, tax included"
						hint="What was bought for them already, say: 0 where nothing remains."
						inputMode="decimal"
						value={one(typed, 'remains')}
						error={errors.remains}
					/>
				) : (
					<input type="hidden" name="remains" value="" />
				)}
				<button type="submit" className="act mt-3">
					{label}
				</button>
			</form>
		</details>
	)
}
