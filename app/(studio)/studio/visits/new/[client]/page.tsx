import type { Metadata } from 'next'
import { v7 } from 'uuid'
import { attemptFor } from '@/app/server/attempt'
import { first, idIn } from '@/app/server/pages'
import { hide } from '@/app/server/refusal'
import { stamp } from '@/app/server/start/clock'
import { studioPage } from '@/app/server/studio/studio-page'
import { ErrorSummary } from '@/app/ui/error-summary'
import { ChoiceField } from '@/app/ui/field'
import { StudioFrame } from '@/app/ui/studio/studio-frame'
import { VisitFields, visitLabels } from '@/app/ui/visits/visit-fields'
import { readNewVisit } from '@/db/clients/visits/read-visit'
import { whoIs } from '@/db/studio/studio'
import { capital } from '@/lib/format/words'
import { seasonName } from '@/lib/season/season'
import { visitKinds } from '@/lib/visit/visit'

export const metadata: Metadata = { title: 'New visit' }

/** A visit of the studio's own making: planned, or made already and written down. */
export default async function New({ params, searchParams }: PageProps<'/studio/visits/new/[client]'>) {
	const { client } = await params
	const { who, frame } = await studioPage(`/studio/visits/new/${client}`, 'record visits')
	const start = await readNewVisit(who, idIn<'client'>(client), stamp())
	if (start === undefined) hide(who)
	const { form, kind: asked, season: of } = await searchParams
	const attempt = await attemptFor(who, form)
	const kind = visitKinds.find((each) => each === first(asked)) ?? 'install'
	const season = attempt.typed.season ?? first(of) ?? start.season
	const me = (await whoIs(who))?.name.split(' ')[0] ?? ''
	const seasons = start.seasons.map(({ id, ...named }) => ({ value: id, label: capital(seasonName(named)) }))
	const [only, ...more] = start.places
	const place = only !== undefined && more.length === 0 ? only.id : ''
	return (
		<StudioFrame {...frame} here="Visits" isHelper={who.is === 'staff' && who.role === 'helper'}>
			<p>
				<a href="/studio/visits" className="inline-flex min-h-11 items-center">
					All visits
				</a>
			</p>
			<h1 className="text-4xl font-extrabold tracking-tight">A visit to {start.name}</h1>
			<form
				key={String(form)}
				method="post"
				encType="multipart/form-data"
				action={`/studio/visits/new/${client}/keep`}
				className="max-w-3xl"
				id="form"
			>
				<ErrorSummary errors={attempt.errors} labels={{ ...visitLabels, season: 'Season' }} />
				<input type="hidden" name="once" value={v7()} />
				<ChoiceField
					name="season"
					label="Season"
					choices={seasons}
					value={String(season)}
					error={attempt.errors.season}
				/>
				<VisitFields
					filled={{ day: start.today, kind, place, came: me, clientNote: '', studioNote: '' }}
					attempt={attempt}
					places={start.places}
					tells
				/>
				<p className="mt-8 flex flex-wrap gap-3">
					<button type="submit" name="do" value="record" className="act first">
						It was made: write it down
					</button>
					<button type="submit" name="do" value="plan" className="act">
						Plan it for this day
					</button>
				</p>
			</form>
		</StudioFrame>
	)
}
