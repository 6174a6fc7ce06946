import { Notes } from '@/app/ui/offer/notes'
import { StateMark } from '@/app/ui/state-mark'
import { Told as Page } from '@/app/ui/told'
import type { OfferPage } from '@/db/proposals/read-offer'
import { isRefusal, refusalInWords, standsInWords } from '@/lib/proposal/offer/told'
import { dayOf } from '@/lib/units/day'

/** What happened to the answer just given, and how the proposal stands. */
export function Told({ page, told }: { readonly page: OfferPage; readonly told: string | undefined }) {
	const { answer, state, timeZone } = page
	const given = answer && {
		on: dayOf(answer.at, timeZone),
		by: answer.words?.name ?? 'a contact',
		reference: answer.reference,
		purchaseOrder: answer.words?.purchaseOrder ?? '',
	}
	const stands = standsInWords(state, given)
	const refused = told !== undefined && isRefusal(told) ? refusalInWords(told) : null
	return (
		<>
			{refused && (
				<p className="said wrong mt-8 text-lg" role="alert">
					{refused}
				</p>
			)}
			{stands && (
				<p className="said mt-8 flex items-start gap-3 text-lg">
					<span className="mt-1">
						<StateMark state={state.is} />
					</span>
					{stands}
				</p>
			)}
			<Notes notes={answer?.words?.notes ?? []} />
		</>
	)
}

export function Erased() {
	return <Page title="Erased" says="What stood here has been erased at your request." />
}
