import { v7 } from 'uuid'
import { AgreementMark } from '@/app/ui/studio/agreement-mark'
import { agreementRowView } from '@/lib/agreement/studio/row-view'
import type { OnDesk } from '@/lib/agreement/studio/shown'
import { moneyFormat } from '@/lib/format/money'
import type { Attempt } from '@/lib/forms/read'
import type { Moment } from '@/lib/units/day'
import { Remind } from '../../remind'
import { takeBack } from '../actions'
import { EndingForm } from './ending-form'
import { PaperForm } from './paper-form'
import { Signatures } from './signatures'

type Props = {
	readonly desk: OnDesk
	readonly attempt: Attempt
	readonly outlook: readonly string[] | undefined
	readonly now: Moment
	readonly isAgain: boolean
	readonly isReminded: boolean
}

/** How it stands: in words, who signed and opened it, and what can be done about it now. */
export function Standing({ desk, attempt, outlook, now, isAgain, isReminded }: Props) {
	const { row } = desk
	const { state, name } = row
	const view = agreementRowView(row, now, desk.timeZone)
	const isOut = state.is === 'to be signed'
	const isHolding = state.is !== 'drafting' && state.is !== 'ended' && state.inForce !== null
	const says = [view.term, view.left, view.more].filter(Boolean).join(' · ')
	return (
		<>
			<p className="mt-3 flex flex-wrap items-center gap-x-3 text-lg">
				<AgreementMark state={state} />
				<span className="font-bold">{view.state}</span>
				<span>{says}</span>
				{row.totalCents !== null && (
					<span className="font-bold">{moneyFormat(desk.currency)(row.totalCents)} fixed in all</span>
				)}
			</p>
			{desk.ending && (
				<p className="mt-2">
					Ended by {desk.ending.by === 'client' ? name : 'the studio'}: “{desk.ending.reason}”
				</p>
			)}
			{desk.declined !== undefined && desk.declined !== '' && <p className="mt-2">They said: “{desk.declined}”</p>}
			<Signatures desk={desk} />
			{row.issued !== null && (
				<p className="mt-3">
					<a href={`/agreement/${row.id}`}>As the client reads it</a>
				</p>
			)}
			{isOut && (
				<div className="mt-4 flex flex-wrap items-baseline gap-x-6">
					<Remind
						agreement={row.id}
						name={name}
						isAgain={isAgain}
						isReminded={isReminded}
						remindedOn={view.remindedOn}
					/>
					{state.inForce === null && (
						<form action={takeBack}>
							<input type="hidden" name="once" value={v7()} />
							<input type="hidden" name="agreement" value={row.id} />
							<button type="submit" className="does">
								Take it back
							</button>
						</form>
					)}
				</div>
			)}
			{isOut && <PaperForm desk={desk} attempt={attempt} />}
			{isHolding && <EndingForm desk={desk} attempt={attempt} outlook={outlook} />}
		</>
	)
}
