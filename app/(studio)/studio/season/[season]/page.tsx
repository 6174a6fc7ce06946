import type { Metadata } from 'next'
import { attemptFor } from '@/app/server/attempt'
import { first, idIn } from '@/app/server/pages'
import { hide } from '@/app/server/refusal'
import { stamp } from '@/app/server/start/clock'
import { studioPage } from '@/app/server/studio/studio-page'
import { ErrorSummary } from '@/app/ui/error-summary'
import { RefreshOnReturn } from '@/app/ui/studio/refresh-on-return'
import { StudioFrame } from '@/app/ui/studio/studio-frame'
import { agreementsToSign } from '@/db/agreements/studio/list'
import { readLate } from '@/db/money/read-money'
import { seasonPage } from '@/db/studio/season-page'
import { clientsWithout, listSeasons } from '@/db/studio/seasons'
import { moneyFormat } from '@/lib/format/money'
import { capital, numberWord } from '@/lib/format/words'
import { ledgerAsk, ledgerQuery } from '@/lib/season/ledger-ask'
import { remindedInWords } from '@/lib/season/reminded-words'
import { seasonName } from '@/lib/season/season'
import { seasonSentence } from '@/lib/season/sentence'
import { Acts } from './acts'
import { Ask } from './ask'
import { Ledger } from './ledger'
import { NotBegun } from './not-begun'

export const metadata: Metadata = { title: 'Season' }

const visitsToPlan = (count: number) => `${numberWord(count)} visit${count === 1 ? '' : 's'} to plan`
const pageNumber = (text: string | undefined) => (text !== undefined && /^[1-9]\d{0,4}$/.test(text) ? Number(text) : 1)

/** What came of reminding all, as the address of the page says it. */
function cameOf(text: string | undefined): string | undefined {
	const [, reminded, lately] = /^(\d{1,5})\.(\d{1,5})$/.exec(text ?? '') ?? []
	return reminded === undefined ? undefined : remindedInWords({ reminded: Number(reminded), lately: Number(lately) })
}

const notWaiting =
	'Nobody was reminded: this client owes no answer any more. They have answered, or the day to answer by has passed; their row says which.'

export default async function Season({ params, searchParams }: PageProps<'/studio/season/[season]'>) {
	const { season: text } = await params
	const path = `/studio/season/${text}`
	const { who, frame } = await studioPage(path, 'see the season')
	const id = idIn<'season'>(text)
	const { page, again, reminded, told, all, form, ...given } = await searchParams
	const number = pageNumber(first(page))
	const ask = ledgerAsk(given)
	const ledger = await seasonPage(who, { season: id, page: number, ask }, stamp())
	if (ledger === undefined) hide(who)
	const { season, totals } = ledger
	const money = moneyFormat(ledger.currency)
	const others = (await listSeasons(who)).filter((each) => each.id !== id).slice(0, 5)
	const came = first(told) === 'not waiting for them' ? notWaiting : cameOf(first(all))
	const { errors } = await attemptFor(who, form)
	const late = await readLate(who, stamp())
	return (
		<StudioFrame {...frame} here="Season" season={season.quarter}>
			<RefreshOnReturn />
			<div className="grid items-end gap-x-12 gap-y-4 lg:grid-cols-2">
				<h1 className="text-6xl font-extrabold tracking-tighter first-letter:uppercase">
					<span className="text-season">{season.quarter}</span>
					{seasonName(season).slice(season.quarter.length)}
				</h1>
				<p className="text-lg">{seasonSentence(totals, money)}</p>
			</div>
			<p className="no-print mt-4 flex flex-wrap gap-x-4 text-soft *:py-1">
				{others.map((each) => (
					<a key={each.id} href={`/studio/season/${each.id}`}>
						{capital(seasonName(each))}
					</a>
				))}
				<a href="/studio?plan">Plan a season</a>
				<a href={`/studio/season/${id}/collection`}>The collection</a>
				<a href={`/studio/season/${id}/result`}>What it brought</a>
				{ledger.visitsToPlan > 0 && (
					<a href="/studio/visits" className="font-semibold text-ink">
						{visitsToPlan(ledger.visitsToPlan)}
					</a>
				)}
			</p>
			{came && (
				<p className="said mt-5" role="status">
					{came}
				</p>
			)}
			<ErrorSummary errors={errors} />
			<Acts
				season={id}
				totals={totals}
				toSign={await agreementsToSign(who, stamp())}
				late={late?.late.clients.length ?? 0}
			/>
			<Ask
				path={path}
				ask={ask}
				asked={ledger.asked}
				all={totals.reduce((sum, { count }) => sum + count, 0)}
				money={money}
			/>
			<Ledger ledger={ledger} page={number} ask={ledgerQuery(ask)} again={first(again)} reminded={first(reminded)} />
			<NotBegun season={id} clients={await clientsWithout(who, id)} />
		</StudioFrame>
	)
}
