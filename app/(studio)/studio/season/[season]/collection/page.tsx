import type { Metadata } from 'next'
import { attemptFor } from '@/app/server/attempt'
import { first, idIn } from '@/app/server/pages'
import { hide } from '@/app/server/refusal'
import { studioPage } from '@/app/server/studio/studio-page'
import { StudioFrame } from '@/app/ui/studio/studio-frame'
import { readCollection } from '@/db/studio/collection/read'
import { capital } from '@/lib/format/words'
import { seasonName } from '@/lib/season/season'
import { DesignForm } from './design-form'
import { ExtraForm } from './extra-form'
import { Overview } from './overview'

export const metadata: Metadata = { title: 'Collection' }

/** The season's house designs: all of them, or one design or extra to change. */
export default async function Collection({ params, searchParams }: PageProps<'/studio/season/[season]/collection'>) {
	const { season: text } = await params
	const { who, frame } = await studioPage(`/studio/season/${text}/collection`, 'see the catalogue')
	const page = await readCollection(who, idIn<'season'>(text))
	if (page === undefined) hide(who)
	const query = await searchParams
	const [design, extra] = [first(query.design), first(query.extra)]
	const attempt = await attemptFor(who, query.form)
	const { season } = page
	return (
		<StudioFrame {...frame} here="Season" season={season.quarter}>
			<p className="flex flex-wrap gap-x-4 text-soft">
				<a href={`/studio/season/${season.id}`}>{capital(seasonName(season))}</a>
				{(design ?? extra) !== undefined && <a href={`/studio/season/${season.id}/collection`}>The collection</a>}
			</p>
			{design !== undefined ? (
				<DesignForm page={page} which={design} attempt={attempt} />
			) : extra !== undefined ? (
				<ExtraForm page={page} which={extra} attempt={attempt} />
			) : (
				<Overview page={page} attempt={attempt} isSaved={first(query.told) === 'saved'} />
			)}
		</StudioFrame>
	)
}
