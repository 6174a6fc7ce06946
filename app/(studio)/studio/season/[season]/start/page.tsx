import type { Metadata } from 'next'
import { attemptFor } from '@/app/server/attempt'
import { first, idIn } from '@/app/server/pages'
import { hide } from '@/app/server/refusal'
import { studioPage } from '@/app/server/studio/studio-page'
import { ErrorSummary } from '@/app/ui/error-summary'
import { StudioFrame } from '@/app/ui/studio/studio-frame'
import { readSources } from '@/db/proposals/desk/sources'
import { capital } from '@/lib/format/words'
import { seasonName } from '@/lib/season/season'
import { Ways } from './ways'

export const metadata: Metadata = { title: 'Start a draft' }

/** What a client's draft may start from, each a choice and one button. */
export default async function Start({ params, searchParams }: PageProps<'/studio/season/[season]/start'>) {
	const { season: text } = await params
	const { who, frame } = await studioPage(`/studio/season/${text}/start`, 'change the draft')
	const { client: whose, form } = await searchParams
	const client = idIn<'client'>(first(whose) ?? '')
	const sources = await readSources(who, { client, season: idIn<'season'>(text) })
	if (sources === undefined) hide(who)
	const { season, there } = sources
	return (
		<StudioFrame {...frame} here="Season" season={season.quarter}>
			<p className="flex flex-wrap gap-x-4 text-soft">
				<a href={`/studio/season/${season.id}`}>{capital(seasonName(season))}</a>
				<a href={`/studio/clients/${client}`}>{sources.client.name}</a>
			</p>
			<h1 className="mt-1 text-4xl font-extrabold tracking-tight">Start from…</h1>
			<ErrorSummary errors={(await attemptFor(who, form)).errors} />
			{there?.isFilled ? (
				<p className="said mt-6">
					There is a draft with palettes already. <a href={`/studio/proposal/${there.proposal}`}>Go to the draft</a>
				</p>
			) : (
				<Ways sources={sources} />
			)}
		</StudioFrame>
	)
}
