import { v7 } from 'uuid'
import { ErrorSummary } from '@/app/ui/error-summary'
import { one } from '@/app/ui/settings-fields'
import type { Attempt } from '@/lib/forms/read'
import type { State } from '@/lib/proposal/state'
import { steer } from './actions'

type Step = {
	readonly step: 'withdraw' | 'reopen' | 'cancel' | 'install'
	readonly label: string
	readonly says: string
}

const open: Step[] = [
	{ step: 'withdraw', label: 'Take it back', says: 'The client hears of it by mail and can no longer answer.' },
]
const approved: Step[] = [
	{ step: 'install', label: 'It is in', says: 'The design has been installed.' },
	{
		step: 'reopen',
		label: 'Open it again',
		says: 'The approval stays in the record; a new version will take its place. The client hears of it by mail.',
	},
	{
		step: 'cancel',
		label: 'Cancel it',
		says: 'The approval stays in the record; nothing goes in. The client hears of it by mail.',
	},
]

const stepsOf = (state: State['is']): readonly Step[] => {
	if (state === 'waiting for an answer' || state === 'lapsed' || state === 'change asked for') return open
	return state === 'approved' ? approved : []
}

type Props = { readonly proposal: string; readonly state: State['is']; readonly attempt: Attempt }

/** What else the studio may do with a proposal where it stands, each with room for a reason. */
export function Steps({ proposal, state, attempt: { typed, errors } }: Props) {
	const steps = stepsOf(state)
	if (steps.length === 0) return null
	return (
		<section className="mt-14 max-w-xl border-t border-line pt-5" aria-labelledby="steps">
			<h2 id="steps" className="text-lg">
				Other steps
			</h2>
			{steps.map(({ step, label, says }) => (
				<details key={step} className="mt-2" open={typed.step === step}>
					<summary className="does inline-block">{label}</summary>
					<form action={steer} className="mt-1 mb-5">
						{typed.step === step && <ErrorSummary errors={errors} />}
						<p className="text-soft">{says}</p>
						<input type="hidden" name="once" value={v7()} />
						<input type="hidden" name="proposal" value={proposal} />
						<input type="hidden" name="step" value={step} />
						<label className="mt-2 block">
							<span className="font-semibold">Reason (kept in the record)</span>
							<textarea
								name="reason"
								rows={2}
								className="box mt-1"
								defaultValue={typed.step === step ? one(typed, 'reason') : ''}
							/>
						</label>
						<button type="submit" className="act mt-3">
							{label}
						</button>
					</form>
				</details>
			))}
		</section>
	)
}
