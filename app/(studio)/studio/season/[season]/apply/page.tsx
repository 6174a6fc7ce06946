import type { Metadata } from 'next'
import { attemptFor } from '@/app/server/attempt'
import { first, idIn } from '@/app/server/pages'
import { hide } from '@/app/server/refusal'
import { stamp } from '@/app/server/start/clock'
import { studioPage } from '@/app/server/studio/studio-page'
import { ErrorSummary } from '@/app/ui/error-summary'
import { StudioFrame } from '@/app/ui/studio/studio-frame'
import { toApply } from '@/db/studio/collection/to-apply'
import { capital, numberWord } from '@/lib/format/words'
import { seasonName } from '@/lib/season/season'
import { Drafts } from './drafts'
import { Whom } from './whom'

export const metadata: Metadata = { title: 'Apply the collection' }

const count = (text: string | string[] | undefined): number | null => {
	const value = first(text)
	return value !== undefined && /^\d{1,3}$/.test(value) ? Number(value) : null
}
const drafts = (n: number) => `${numberWord(n)} draft${n === 1 ? ' was' : 's were'} made.`

/** To whom the collection is applied, and how what was drafted stands. */
export default async function Apply({ params, searchParams }: PageProps<'/studio/season/[season]/apply'>) {
	const { season: text } = await params
	const { who, frame } = await studioPage(`/studio/season/${text}/apply`, 'change the draft')
	const page = await toApply(who, idIn<'season'>(text), stamp())
	if (page === undefined) hide(who)
	const query = await searchParams
	const [drafted, alone, bare] = [count(query.drafted), count(query.alone), count(query.bare)]
	const attempt = await attemptFor(who, query.form)
	const { season } = page
	return (
		<StudioFrame {...frame} here="Season" season={season.quarter}>
			<p className="flex flex-wrap gap-x-4 text-soft">
				<a href={`/studio/season/${season.id}`}>{capital(seasonName(season))}</a>
				<a href={`/studio/season/${season.id}/collection`}>The collection</a>
			</p>
			<h1 className="mt-1 text-4xl font-extrabold tracking-tight">Apply the collection</h1>
			{drafted !== null && (
				<p className="said mt-5">
					{drafts(drafted)}
					{alone !== null && alone > 0 && ` ${numberWord(alone)} had palettes already and stayed as they were.`}
					{bare !== null && bare > 0 && ` ${numberWord(bare)} had no container to fill.`}
				</p>
			)}
			<ErrorSummary errors={attempt.errors} labels={{ client: 'Clients', options: 'Each is offered' }} />
			<Whom page={page} attempt={attempt} />
			<Drafts drafts={page.drafts} />
		</StudioFrame>
	)
}
