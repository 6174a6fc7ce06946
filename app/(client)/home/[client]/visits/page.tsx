import type { Metadata } from 'next'
import { first, idIn, signedIn } from '@/app/server/pages'
import { hide } from '@/app/server/refusal'
import { stamp } from '@/app/server/start/clock'
import { ClientFrame } from '@/app/ui/client-frame'
import { SeasonChapter } from '@/app/ui/visits/season-chapter'
import { visitsOf } from '@/db/clients/visits/visits-of'
import { studioName, whoIs } from '@/db/studio/studio'
import { timeline } from '@/lib/visit/timeline'

export const metadata: Metadata = { title: 'Your visits' }

/** A client's whole history, the newest season first. */
export default async function Visits({ params, searchParams }: PageProps<'/home/[client]/visits'>) {
	const { client } = await params
	const query = await searchParams
	const who = await signedIn(`/home/${client}/visits`, query)
	const history = await visitsOf(who, idIn<'client'>(client), stamp())
	if (history === undefined) hide(who)
	const chapters = timeline(history.visits, history.designs)
	return (
		<ClientFrame studio={(await studioName(who)) ?? ''} who={await whoIs(who)} home={`/home/${client}`}>
			<div className="mx-auto max-w-3xl px-5 pt-[4vh]">
				<p>
					<a className="inline-flex min-h-11 items-center" href={`/home/${client}`}>
						Back to {history.name}
					</a>
				</p>
				<h1 className="mt-2 text-5xl tracking-tight">Your visits</h1>
				{first(query.told) === 'reported' && (
					<p className="said mt-6 text-lg" role="status">
						We have it; we plan a visit. You find it below.
					</p>
				)}
				<p className="mt-6">
					<a className="act" href={`/home/${client}/wrong`}>
						Something is wrong
					</a>
				</p>
				{chapters.length === 0 && <p className="mt-8 text-lg">Nothing yet: your first visit will stand here.</p>}
				{chapters.map((chapter) => (
					<SeasonChapter key={`${chapter.season.year} ${chapter.season.quarter}`} chapter={chapter} />
				))}
			</div>
		</ClientFrame>
	)
}
