import type { Metadata } from 'next'
import { v7 } from 'uuid'
import { answerableAt } from '@/app/server/answers/agreement/agreement-page'
import { attemptFor } from '@/app/server/attempt'
import { ClientFrame } from '@/app/ui/client-frame'
import { ErrorSummary } from '@/app/ui/error-summary'
import { WordsField } from '@/app/ui/field'
import { one } from '@/app/ui/studio/settings-fields'

export const metadata: Metadata = { title: 'Decline the agreement' }

export default async function Decline({ params, searchParams }: PageProps<'/agreement/[agreement]/decline'>) {
	const query = await searchParams
	const { who, me, path, page, document } = await answerableAt((await params).agreement, '/decline', query)
	const { typed, errors } = await attemptFor(who, query.form)
	const holds = page.state.is === 'to be signed' && page.state.inForce !== null
	return (
		<ClientFrame studio={document.studio.name} who={me}>
			<div className="mx-auto max-w-2xl px-5 pt-8">
				<p>
					<a className="inline-flex min-h-11 items-center" href={path}>
						Back to the agreement
					</a>
				</p>
				<h1 className="mt-2 text-4xl">Decline this agreement?</h1>
				<p className="mt-2 text-lg">
					{holds ? 'The one before goes on to hold.' : 'Nothing is agreed then, and nothing is due.'} If only a part of
					it does not suit you, say so: we change it and send you another.
				</p>
				<ErrorSummary errors={errors} labels={{ reason: 'Why' }} />
				<form method="post" action={`${path}/answer/decline`} noValidate>
					<input type="hidden" name="once" value={v7()} />
					<input type="hidden" name="document" value={page.hash} />
					<WordsField name="reason" label="Why?" value={one(typed, 'reason')} error={errors.reason} />
					<button type="submit" className="act first mt-8">
						Decline the agreement
					</button>
				</form>
			</div>
		</ClientFrame>
	)
}
