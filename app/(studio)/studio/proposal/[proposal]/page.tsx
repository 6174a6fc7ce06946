import type { Metadata } from 'next'
import { attemptFor } from '@/app/server/attempt'
import { first, idIn } from '@/app/server/pages'
import { hide } from '@/app/server/refusal'
import { stamp } from '@/app/server/start/clock'
import { env } from '@/app/server/start/env'
import { studioPage } from '@/app/server/studio/studio-page'
import { StateMark } from '@/app/ui/marks/state-mark'
import { StudioFrame } from '@/app/ui/studio/studio-frame'
import { readDesk } from '@/db/proposals/desk/read-desk'
import { capital } from '@/lib/format/words'
import { clientLink } from '@/lib/forms/client-link'
import { draftText } from '@/lib/forms/draft-form'
import { coverPath } from '@/lib/forms/pictures/cover-address'
import { answerHolds } from '@/lib/proposal/offer/answer-holds'
import { seasonName } from '@/lib/season/season'
import { Asked } from './asked'
import { Editor } from './editor/editor'
import { LinkToSend } from './link-to-send'
import { SeenFilters } from './seen-filters'
import { Steps } from './steps'

export const metadata: Metadata = { title: 'Proposal' }

const tellings: Record<string, string> = {
	published: 'Published. The client’s contacts hear of it by mail.',
	steered: 'Done.',
	started: 'The draft is started: look it through and tune it.',
	changed: 'The draft is started. What is no longer taken, or gone, was replaced or left out: look at each container.',
	'saved elsewhere':
		'It was saved in another window a moment before. Nothing was published: look it through once more.',
	'not ready': 'Nothing was published: see what is still missing.',
	'taken down': 'Written down, and marked as taken by phone. The client has a receipt by mail.',
	'not waiting for them': 'It does not wait for an answer any more: see where it stands.',
}

/** The desk: the draft on the left, quote and costing beside it, the steps of the proposal below. */
export default async function Desk({ params, searchParams }: PageProps<'/studio/proposal/[proposal]'>) {
	const { proposal: text } = await params
	const { who, frame } = await studioPage(`/studio/proposal/${text}`, 'change the draft')
	const id = idIn<'proposal'>(text)
	const desk = await readDesk(who, id, stamp())
	if (desk === undefined) hide(who)
	const { told: how, form } = await searchParams
	const told = first(how)
	const { client, season, state, number, recipients, places, containers, colours, materials, recipes } = desk
	return (
		<StudioFrame {...frame} here="Season" season={season.quarter}>
			<p className="text-soft">
				<a href={`/studio/season/${season.id}`}>{capital(seasonName(season))}</a> ·{' '}
				<a href={`/studio/clients/${client.id}`}>{client.name}</a>
			</p>
			<div className="mt-1 flex flex-wrap items-baseline justify-between gap-x-8 gap-y-2">
				<h1 className="text-4xl font-extrabold tracking-tight">{client.name}</h1>
				<p className="flex flex-wrap items-center gap-x-4 gap-y-1 font-semibold">
					<span className="flex items-center gap-2">
						<StateMark state={state.is} />
						{capital(state.is)}
					</span>
					{number > 0 && <a href={`/proposal/${id}`}>revision {number}</a>}
					<a href={`/studio/proposal/${id}/preview`}>Preview</a>
					{answerHolds('approval', state.is) && <a href={`/proposal/${id}/pdf`}>As a PDF</a>}
					{state.is === 'waiting for an answer' && <a href={`/studio/proposal/${id}/phone`}>Take an answer by phone</a>}
				</p>
			</div>
			{told && <p className="said mt-5">{tellings[told] ?? `That could not be done: ${told}.`}</p>}
			<Asked answer={desk.answer} palette={desk.palette} timeZone={desk.timeZone} />
			<SeenFilters />
			{desk.draft.options.length === 0 && (
				<p className="mt-5">
					<a href={`/studio/season/${season.id}/start?client=${client.id}`} className="act inline-flex items-center">
						Start from…
					</a>{' '}
					<span className="text-soft">an earlier season, the collection, another client or a recipe</span>
				</p>
			)}
			<noscript>
				<p className="said mt-5">This page needs scripts: what is changed here is kept as it is typed.</p>
			</noscript>
			<Editor
				proposal={id}
				version={desk.version}
				draft={draftText(desk.draft)}
				problems={desk.problems}
				clientPage={`/studio/clients/${client.id}`}
				known={{ recipients, places, containers, colours, materials, recipes }}
				mayPublish={!['approved', 'cancelled', 'installed'].includes(state.is)}
			/>
			{desk.coverKey !== null && (
				<LinkToSend
					link={`${env().siteUrl}${clientLink({ proposal: id, coverKey: desk.coverKey })}`}
					cover={coverPath(desk.coverKey)}
				/>
			)}
			<Steps proposal={id} state={state.is} attempt={await attemptFor(who, form)} />
		</StudioFrame>
	)
}
