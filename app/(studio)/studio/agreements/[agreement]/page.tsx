import type { Metadata } from 'next'
import { attemptFor } from '@/app/server/attempt'
import { first, idIn } from '@/app/server/pages'
import { hide } from '@/app/server/refusal'
import { stamp } from '@/app/server/start/clock'
import { studioPage } from '@/app/server/studio/studio-page'
import { ErrorSummary } from '@/app/ui/error-summary'
import { StudioFrame } from '@/app/ui/studio/studio-frame'
import { endingOutlook } from '@/db/agreements/studio/end'
import { agreementDesk } from '@/db/agreements/studio/read-desk'
import { endingForm } from '@/lib/agreement/studio/form/act-forms'
import type { Attempt } from '@/lib/forms/read'
import { IssueForm } from './standing/issue-form'
import { Standing } from './standing/standing'
import { Text } from './standing/text'
import { TermsForm } from './terms/terms-form'

export const metadata: Metadata = { title: 'Agreement' }

const told: Readonly<Record<string, string>> = {
	saved: 'Saved.',
	issued: 'Issued, with a mail on its way to who may sign.',
	taken: 'Taken back, and they are told.',
	ended: 'Ended, and they are told.',
	paper: 'The paper signature is kept. Both sides hold the agreement now.',
	'not waiting for them': 'Nobody was reminded: no signature is waited for any more.',
}

/** Errors of a form that has boxes of its own are told there. */
const isOfOwnForm = ({ typed }: Attempt) => ['from', 'saidOn', 'signer'].some((name) => name in typed)

export default async function Agreement({ params, searchParams }: PageProps<'/studio/agreements/[agreement]'>) {
	const { agreement: text } = await params
	const { who, frame } = await studioPage(`/studio/agreements/${text}`, 'change agreements')
	const id = idIn<'agreement'>(text)
	const now = stamp()
	const desk = await agreementDesk(who, id, now)
	if (desk === undefined) hide(who)
	const { form, told: asked, again, reminded } = await searchParams
	const attempt = await attemptFor(who, form)
	const ending = endingForm.safeParse(attempt.typed)
	const outlook = ending.success ? await endingOutlook(who, id, ending.data.ending, now) : undefined
	const says = form === undefined ? told[first(asked) ?? ''] : undefined
	const { clauses } = desk
	const { state } = desk.row
	const isWriting = state.is === 'drafting' || state.is === 'declined'
	const isTried = 'version' in attempt.typed
	const isToIssue = isWriting || (desk.changes ?? []).length > 0 || desk.problems.length > 0
	return (
		<StudioFrame {...frame} here="Agreements">
			<p>
				<a href="/studio/agreements" className="inline-flex min-h-11 items-center">
					All agreements
				</a>
			</p>
			<h1 className="text-4xl font-extrabold tracking-tight">{desk.row.name}</h1>
			{says && (
				<p className="said mt-5 max-w-3xl" role="status">
					{says}
				</p>
			)}
			{!isOfOwnForm(attempt) && <ErrorSummary errors={attempt.errors} />}
			<Standing
				desk={desk}
				attempt={attempt}
				outlook={outlook}
				now={now.at}
				isAgain={first(again) === id}
				isReminded={first(reminded) === id}
			/>
			{state.is !== 'ended' && (
				<>
					<details className="mt-10 border-t border-line pt-4" open={isWriting || isTried}>
						<summary className="min-h-11 cursor-pointer py-2 text-xl font-bold">
							{isWriting ? 'The terms' : 'Change the terms'}
						</summary>
						<TermsForm key={String(form)} desk={desk} attempt={attempt} />
					</details>
					{(isToIssue || 'signBy' in attempt.typed) && <IssueForm desk={desk} attempt={attempt} />}
					<Text clauses={clauses} isOpen={state.is === 'drafting'} />
				</>
			)}
		</StudioFrame>
	)
}
