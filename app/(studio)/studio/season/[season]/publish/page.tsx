import type { Metadata } from 'next'
import { v7 } from 'uuid'
import { attemptFor } from '@/app/server/attempt'
import { first, idIn } from '@/app/server/pages'
import { hide } from '@/app/server/refusal'
import { stamp } from '@/app/server/start/clock'
import { studioPage } from '@/app/server/studio/studio-page'
import { ErrorSummary } from '@/app/ui/error-summary'
import { Came } from '@/app/ui/studio/many/came'
import { ManyForm } from '@/app/ui/studio/many/many-form'
import { StudioFrame } from '@/app/ui/studio/studio-frame'
import { seasonDrafts } from '@/db/studio/ready-drafts'
import { moneyFormat } from '@/lib/format/money'
import { draftViews } from '@/lib/season/draft-view'
import { seasonName } from '@/lib/season/season'
import { NotReady } from './not-ready'
import { Ready } from './ready'

export const metadata: Metadata = { title: 'Publish' }

/** What is ready and what would be mailed to whom, what is not ready and why; all that is ready is ticked. */
export default async function Publish({ params, searchParams }: PageProps<'/studio/season/[season]/publish'>) {
	const { season: text } = await params
	const path = `/studio/season/${text}/publish`
	const { who, frame } = await studioPage(path, 'publish')
	const found = await seasonDrafts(who, idIn<'season'>(text), stamp())
	if (found === undefined) hide(who)
	const { season } = found
	const { done, only, form } = await searchParams
	const came = await attemptFor(who, done)
	const { errors } = await attemptFor(who, form)
	const { ready, notReady } = draftViews(found.drafts, moneyFormat(found.currency))
	return (
		<StudioFrame {...frame} here="Season" season={season.quarter}>
			<p>
				<a href={`/studio/season/${season.id}`}>Back to {seasonName(season)}</a>
			</p>
			<h1 className="mt-1 text-4xl font-extrabold tracking-tight">Publish {seasonName(season)}</h1>
			<Came done="published" went={[came.typed.published ?? []].flat()} not={Object.values(came.errors)} />
			<ErrorSummary errors={errors} />
			<ManyForm
				action={`${path}/send`}
				once={v7()}
				count={ready.length}
				done="published"
				label="Publish what is ticked"
			>
				{ready.length === 0 ? (
					<p className="mt-6 text-lg">No draft is ready to be published.</p>
				) : (
					<Ready drafts={ready} only={first(only)} />
				)}
			</ManyForm>
			<NotReady drafts={notReady} />
		</StudioFrame>
	)
}
