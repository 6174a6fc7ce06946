import { Alert } from '@/app/ui/alert'
import { StateMark } from '@/app/ui/marks/state-mark'
import { Notes } from '@/app/ui/offer/notes'
import { Told as Page } from '@/app/ui/told'
import type { OfferPage } from '@/db/proposals/read-offer'
import { answerHolds } from '@/lib/proposal/offer/answer-holds'
import { answeredBy } from '@/lib/proposal/offer/answered-by'
import { remainsInWords } from '@/lib/proposal/offer/due-words'
import { offerMoney } from '@/lib/proposal/offer/price-view'
import { isRefusal, refusalInWords, revisedInWords, standsInWords } from '@/lib/proposal/offer/told'
import { dayOf } from '@/lib/units/day'

type Props = {
	readonly page: OfferPage
	/** The revision that was in view before, as the address of the page says it. */
	readonly read: string | undefined
	/** What happened to the answer just given. */
	readonly told: string | undefined
}

/** What happened to the answer just given or to the design meanwhile, and how the proposal stands. */
export function Told({ page, read, told }: Props) {
	const { answer, state, timeZone } = page
	const given = answer && {
		on: dayOf(answer.at, timeZone),
		by: answeredBy(answer.word, answer.words),
		reference: answer.reference,
		purchaseOrder: answer.words?.purchaseOrder ?? '',
	}
	const remains =
		page.remains === null || page.offer === undefined ? '' : ` ${remainsInWords(page.remains, offerMoney(page.offer))}`
	const said = standsInWords(state, given)
	const stands = said && `${said}${remains}`
	const refused = told !== undefined && isRefusal(told) ? refusalInWords(told) : null
	const isRevised = state.is === 'waiting for an answer' && read !== undefined && read !== page.hash
	const alert = refused ?? (isRevised ? revisedInWords : null)
	return (
		<>
			{alert && <Alert key={page.hash}>{alert}</Alert>}
			{stands && (
				<p className="said mt-8 flex items-start gap-3 text-lg">
					<span className="mt-1">
						<StateMark state={state.is} />
					</span>
					{stands}
				</p>
			)}
			{answer?.kind === 'approval' && answerHolds(answer.kind, state.is) && page.offer !== undefined && (
				<p className="no-print mt-2">
					<a className="inline-flex min-h-11 items-center" href={`/proposal/${page.offer.proposal}/pdf`}>
						Take it as a PDF
					</a>
				</p>
			)}
			<Notes notes={answer?.words?.notes ?? []} word={answer?.word ?? 'client'} />
		</>
	)
}

export function Erased() {
	return <Page title="Erased" says="What stood here has been erased at your request." />
}
