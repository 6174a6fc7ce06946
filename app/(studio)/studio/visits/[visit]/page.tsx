import type { Metadata } from 'next'
import { attemptFor } from '@/app/server/attempt'
import { first, idIn } from '@/app/server/pages'
import { hide } from '@/app/server/refusal'
import { stamp } from '@/app/server/start/clock'
import { studioPage } from '@/app/server/studio/studio-page'
import { StudioFrame } from '@/app/ui/studio/studio-frame'
import { Photos } from '@/app/ui/visits/photos'
import { readVisit } from '@/db/clients/visits/read-visit'
import { whoIs } from '@/db/studio/studio'
import { capital } from '@/lib/format/words'
import { seasonName } from '@/lib/season/season'
import { visitWords } from '@/lib/visit/words'
import { Said } from '../book'
import { RecordForm } from './record-form'

export const metadata: Metadata = { title: 'Visit' }

const tells: Readonly<Record<string, string>> = {
	plan: 'Planned.',
	record: 'Written down.',
	drop: 'Dropped: nobody comes for it.',
}

/** One visit: what the client wrote, how it stands, and the form to plan it, write it down or drop it. */
export default async function Visit({ params, searchParams }: PageProps<'/studio/visits/[visit]'>) {
	const { visit: text } = await params
	const { who, frame } = await studioPage(`/studio/visits/${text}`, 'see visits')
	const page = await readVisit(who, idIn<'visit'>(text), stamp())
	if (page === undefined) hide(who)
	const { visit } = page
	const { form, told } = await searchParams
	const isHelper = who.is === 'staff' && who.role === 'helper'
	const says = tells[first(told) ?? '']
	const me = (await whoIs(who))?.name.split(' ')[0] ?? ''
	return (
		<StudioFrame {...frame} here="Visits" season={visit.season.quarter} isHelper={isHelper}>
			<p>
				<a href="/studio/visits" className="inline-flex min-h-11 items-center">
					All visits
				</a>
			</p>
			<h1 className="text-4xl font-extrabold tracking-tight">{visit.clientName}</h1>
			<p className="mt-1 text-lg">
				{visitWords(visit)}, {visit.placeName === '' ? 'all places' : visit.placeName},{' '}
				{capital(seasonName(visit.season))}
				{!isHelper && (
					<>
						{' · '}
						<a href={`/studio/clients/${visit.client}`}>The client’s page</a>
					</>
				)}
			</p>
			{says && (
				<p className="said mt-5 max-w-3xl font-semibold" role="status">
					{says}
				</p>
			)}
			<div className="max-w-3xl">
				<Said visit={visit} />
				{visit.state === 'done' && visit.clientNote !== '' && (
					<p className="mt-4 text-lg whitespace-pre-line wrap-anywhere">{visit.clientNote}</p>
				)}
				{visit.state === 'done' && visit.studioNote !== '' && (
					<p className="mt-2 whitespace-pre-line wrap-anywhere text-soft">For the studio: {visit.studioNote}</p>
				)}
				<Photos photos={visit.photos} of={`at ${visit.clientName}`} />
				<RecordForm key={String(form)} page={page} attempt={await attemptFor(who, form)} me={me} />
			</div>
		</StudioFrame>
	)
}
