import type { Metadata } from 'next'
import { first, idIn } from '@/app/server/pages'
import { hide } from '@/app/server/refusal'
import { stamp } from '@/app/server/start/clock'
import { studioPage } from '@/app/server/studio/studio-page'
import { StudioFrame } from '@/app/ui/studio/studio-frame'
import { seasonPage } from '@/db/studio/season-page'
import { clientsWithout, listSeasons } from '@/db/studio/seasons'
import { moneyFormat } from '@/lib/format/money'
import { capital, numberWord } from '@/lib/format/words'
import { seasonName } from '@/lib/season/season'
import { seasonSentence } from '@/lib/season/sentence'
import { Ledger } from './ledger'
import { NotBegun } from './not-begun'

export const metadata: Metadata = { title: 'Season' }

const visitsToPlan = (count: number) => `${numberWord(count)} visit${count === 1 ? '' : 's'} to plan`
const pageNumber = (text: string | undefined) => (text !== undefined && /^[1-9]\d{0,4}$/.test(text) ? Number(text) : 1)

export default async function Season({ params, searchParams }: PageProps<'/studio/season/[season]'>) {
	const { season: text } = await params
	const { who, frame } = await studioPage(`/studio/season/${text}`, 'see the season')
	const id = idIn<'season'>(text)
	const { page, again, reminded, told } = await searchParams
	const number = pageNumber(first(page))
	const ledger = await seasonPage(who, { season: id, page: number }, stamp())
	if (ledger === undefined) hide(who)
	const { season } = ledger
	const money = moneyFormat(ledger.currency)
	const others = (await listSeasons(who)).filter((each) => each.id !== id).slice(0, 5)
	return (
		<StudioFrame {...frame} here="Season" season={season.quarter}>
			<div className="grid items-end gap-x-12 gap-y-4 lg:grid-cols-2">
				<h1 className="text-6xl font-extrabold tracking-tighter first-letter:uppercase">
					<span className="text-season">{season.quarter}</span>
					{seasonName(season).slice(season.quarter.length)}
				</h1>
				<p className="text-lg">{seasonSentence(ledger.totals, money)}</p>
			</div>
			<p className="no-print mt-4 flex flex-wrap gap-x-4 text-soft">
				{others.map((each) => (
					<a key={each.id} href={`/studio/season/${each.id}`}>
						{capital(seasonName(each))}
					</a>
				))}
				<a href="/studio?plan">Plan a season</a>
				<a href={`/studio/season/${id}/collection`}>The collection</a>
				{ledger.visitsToPlan > 0 && (
					<a href="/studio/visits" className="font-semibold text-ink">
						{visitsToPlan(ledger.visitsToPlan)}
					</a>
				)}
			</p>
			{first(told) === 'not waiting for them' && (
				<p className="said mt-5">Nobody was reminded: it no longer waits for them.</p>
			)}
			<Ledger ledger={ledger} page={number} again={first(again)} reminded={first(reminded)} />
			<NotBegun season={id} clients={await clientsWithout(who, id)} />
		</StudioFrame>
	)
}
