import type { Metadata } from 'next'
import { v7 } from 'uuid'
import { answerable } from '@/app/server/answers/answer-page'
import { pickedOf } from '@/app/server/answers/picked'
import { attemptFor } from '@/app/server/attempt'
import { ClientFrame } from '@/app/ui/client-frame'
import { ErrorSummary } from '@/app/ui/error-summary'
import { described, Field } from '@/app/ui/field'
import { pickedQuery } from '@/app/ui/offer/chosen-query'
import type { FieldErrors } from '@/lib/forms/read'
import { changeParts } from '@/lib/proposal/offer/parts'

export const metadata: Metadata = { title: 'Ask for a change' }

export default async function Change({ params, searchParams }: PageProps<'/proposal/[proposal]/change'>) {
	const query = await searchParams
	const { revision, form } = query
	const { who, me, path, page, offer } = await answerable((await params).proposal, revision)
	const { typed, errors } = await attemptFor(who, form)
	const chosen = `?${pickedQuery(pickedOf(query), page.hash)}`
	const notes = [typed.note ?? []].flat()
	// What is wrong with all of them stands beside the first.
	const { note, ...each } = errors
	const wrong: FieldErrors = note === undefined ? each : { 'note.0': note }
	const parts = changeParts(offer)
	const labels = Object.fromEntries(parts.map(({ name }, index) => [`note.${index}`, name]))
	return (
		<ClientFrame studio={offer.studio} who={me} season={offer.season}>
			<div className="mx-auto max-w-2xl px-5 pt-8">
				<p>
					<a href={`${path}${chosen}`}>Back to the design</a>
				</p>
				<h1 className="mt-4 text-4xl">What would you like to be different?</h1>
				<p className="mt-2 text-lg">
					Write beside the part that it is about, as many as you like. You get a new revision to answer.
				</p>
				<ErrorSummary errors={wrong} labels={labels} />
				<form method="post" action={`${path}/answer/change${chosen}`} noValidate>
					<input type="hidden" name="once" value={v7()} />
					<input type="hidden" name="revision" value={page.hash} />
					{parts.map(({ key, name }, index) => {
						const field = { name: `note.${index}`, error: wrong[`note.${index}`] }
						return (
							<Field key={key} label={name} {...field}>
								<input type="hidden" name="about" value={key} />
								<textarea
									{...described(field)}
									name="note"
									rows={key === 'whole' ? 4 : 2}
									className="box"
									defaultValue={notes[index] ?? ''}
								/>
							</Field>
						)
					})}
					<button type="submit" className="act first mt-8">
						Ask for this change
					</button>
				</form>
			</div>
		</ClientFrame>
	)
}
