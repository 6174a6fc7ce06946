import type { Metadata } from 'next'
import { v7 } from 'uuid'
import { answerable } from '@/app/server/answers/answer-page'
import { attemptFor } from '@/app/server/attempt'
import { ClientFrame } from '@/app/ui/client-frame'
import { ErrorSummary } from '@/app/ui/error-summary'
import { WordsField } from '@/app/ui/field'
import { one } from '@/app/ui/studio/settings-fields'
import { choiceQuery } from '@/lib/forms/read'
import { seasonName } from '@/lib/season/season'

export const metadata: Metadata = { title: 'Skip this season' }

export default async function Skip({ params, searchParams }: PageProps<'/proposal/[proposal]/skip'>) {
	const { revision, form } = await searchParams
	const { who, me, path, page, offer } = await answerable((await params).proposal, revision)
	const { typed, errors } = await attemptFor(who, form)
	return (
		<ClientFrame studio={offer.studio} who={me} season={offer.season}>
			<div className="mx-auto max-w-2xl px-5 pt-8">
				<p>
					<a href={`${path}?${choiceQuery({ revision: page.hash })}`}>Back to the design</a>
				</p>
				<h1 className="mt-4 text-4xl">Skip {seasonName(offer.season)}?</h1>
				<p className="mt-2 text-lg">
					Nothing goes in and nothing is due for this season. You hear from us again for the next one.
				</p>
				<ErrorSummary errors={errors} />
				<form method="post" action={`${path}/answer/skip`} noValidate>
					<input type="hidden" name="once" value={v7()} />
					<input type="hidden" name="revision" value={page.hash} />
					<WordsField
						name="why"
						label="Would you tell us why? (optional)"
						value={one(typed, 'why')}
						error={errors.why}
					/>
					<button type="submit" className="act first mt-8">
						Skip this season
					</button>
				</form>
			</div>
		</ClientFrame>
	)
}
