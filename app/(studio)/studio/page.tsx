import { redirect } from 'next/navigation'
import { attemptFor } from '@/app/server/attempt'
import { now } from '@/app/server/start/clock'
import { studioPage } from '@/app/server/studio/studio-page'
import { StudioFrame } from '@/app/ui/studio/studio-frame'
import { listSeasons } from '@/db/studio/seasons'
import { moment } from '@/lib/units/day'
import { PlanSeason } from './plan-season'

/** The season that is being worked on: the next one to go in, else the last. */
export default async function Studio({ searchParams }: PageProps<'/studio'>) {
	const { who, frame } = await studioPage('/studio', 'see the season')
	const seasons = await listSeasons(who)
	const today = moment(now()).slice(0, 10)
	const current = seasons.findLast(({ windowTo }) => windowTo >= today) ?? seasons[0]
	const { plan, form } = await searchParams
	if (current !== undefined && plan === undefined) redirect(`/studio/season/${current.id}`)
	return (
		<StudioFrame {...frame} here="Season">
			<PlanSeason attempt={await attemptFor(who, form)} />
		</StudioFrame>
	)
}
