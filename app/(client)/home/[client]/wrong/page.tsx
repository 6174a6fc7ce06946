import type { Metadata } from 'next'
import { v7 } from 'uuid'
import { attemptFor } from '@/app/server/attempt'
import { idIn, mustMay, signedIn } from '@/app/server/pages'
import { hide } from '@/app/server/refusal'
import { stamp } from '@/app/server/start/clock'
import { ClientFrame } from '@/app/ui/client-frame'
import { ErrorSummary } from '@/app/ui/error-summary'
import { ChoiceField, WordsField } from '@/app/ui/field'
import { PhotoField } from '@/app/ui/visits/photo-field'
import { visitsOf } from '@/db/clients/visits/visits-of'
import { studioName, whoIs } from '@/db/studio/studio'
import { mostPhotos } from '@/lib/visit/photo'

export const metadata: Metadata = { title: 'Something is wrong' }

const labels = { words: 'What is wrong', place: 'Where', wrong: 'Photos' }
const one = (value: unknown): string | undefined => (typeof value === 'string' ? value : undefined)

/** Words, a place and a few photos: it becomes a visit that the studio plans. */
export default async function Wrong({ params, searchParams }: PageProps<'/home/[client]/wrong'>) {
	const { client } = await params
	const who = await signedIn(`/home/${client}/wrong`)
	const id = idIn<'client'>(client)
	mustMay(who, 'say what is wrong', id)
	const history = await visitsOf(who, id, stamp())
	if (history === undefined) hide(who)
	const { form } = await searchParams
	const { typed, errors } = await attemptFor(who, form)
	const { places } = history
	const choices = [
		...places.map((place) => ({ value: place.id, label: place.name })),
		{ value: '', label: 'All places' },
	]
	return (
		<ClientFrame studio={(await studioName(who)) ?? ''} who={await whoIs(who)} home={`/home/${client}`}>
			<div className="mx-auto max-w-2xl px-5 pt-[4vh]">
				<p>
					<a className="inline-flex min-h-11 items-center" href={`/home/${client}/visits`}>
						Back to your visits
					</a>
				</p>
				<h1 className="mt-2 text-4xl tracking-tight">Something is wrong?</h1>
				<p className="mt-2 text-lg">Tell us what it is, and we plan a visit. A photo helps us bring the right thing.</p>
				<ErrorSummary errors={errors} labels={labels} />
				<form
					key={String(form)}
					method="post"
					encType="multipart/form-data"
					action={`/home/${client}/wrong/send`}
					id="form"
				>
					<input type="hidden" name="once" value={v7()} />
					<WordsField name="words" label={labels.words} rows={4} value={one(typed.words)} error={errors.words} />
					{places.length > 1 ? (
						<ChoiceField
							name="place"
							label={labels.place}
							value={one(typed.place)}
							choices={choices}
							error={errors.place}
						/>
					) : (
						<input type="hidden" name="place" value={places[0]?.id ?? ''} />
					)}
					<PhotoField name="wrong" label={labels.wrong} most={mostPhotos.wrong} error={errors.wrong} />
					<button type="submit" className="act first mt-8">
						Tell the studio
					</button>
				</form>
			</div>
		</ClientFrame>
	)
}
