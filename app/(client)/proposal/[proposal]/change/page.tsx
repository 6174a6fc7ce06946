import type { Metadata } from 'next'
import { v7 } from 'uuid'
import { answerable } from '@/app/server/answers/answer-page'
import { attemptFor } from '@/app/server/attempt'
import { ClientFrame } from '@/app/ui/client-frame'
import { ErrorSummary } from '@/app/ui/error-summary'
import { choiceQuery } from '@/lib/forms/read'
import { changeParts } from '@/lib/proposal/offer/parts'

export const metadata: Metadata = { title: 'Ask for a change' }

export default async function Change({ params, searchParams }: PageProps<'/proposal/[proposal]/change'>) {
	const { revision, form } = await searchParams
	const { who, me, path, page, offer } = await answerable((await params).proposal, revision)
	const { typed, errors } = await attemptFor(who, form)
	const notes = [typed.note ?? []].flat()
	const wrong = errors.note ?? Object.entries(errors).find(([name]) => name.startsWith('note.'))?.[1]
	return (
		<ClientFrame studio={offer.studio} who={me} season={offer.season}>
			<div className="mx-auto max-w-2xl px-5 pt-8">
				<p>
					<a href={`${path}?${choiceQuery({ revision: page.hash })}`}>Back to the design</a>
				</p>
				<h1 className="mt-4 text-4xl">What would you like to be different?</h1>
				<p className="mt-2 text-lg">
					Write beside the part that it is about, as many as you like. You get a new revision to answer.
				</p>
				<ErrorSummary errors={wrong === undefined ? {} : { 'note-whole': wrong }} />
				<form method="post" action={`${path}/answer/change`} noValidate>
					<input type="hidden" name="once" value={v7()} />
					<input type="hidden" name="revision" value={page.hash} />
					{changeParts(offer).map(({ key, name }, index) => (
						<div key={key} className="mt-5">
							<input type="hidden" name="about" value={key} />
							<label htmlFor={`note-${key}`} className="font-semibold">
								{name}
							</label>
							<textarea
								id={`note-${key}`}
								name="note"
								rows={key === 'whole' ? 4 : 2}
								className="box mt-1"
								defaultValue={notes[index] ?? ''}
							/>
						</div>
					))}
					<button type="submit" className="act first mt-8">
						Ask for this change
					</button>
				</form>
			</div>
		</ClientFrame>
	)
}
