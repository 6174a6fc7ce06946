import type { Metadata } from 'next'
import { attemptFor } from '@/app/server/attempt'
import { first } from '@/app/server/pages'
import { hide } from '@/app/server/refusal'
import { stamp } from '@/app/server/start/clock'
import { studioPage } from '@/app/server/studio/studio-page'
import { ErrorSummary } from '@/app/ui/error-summary'
import { RefreshOnReturn } from '@/app/ui/studio/refresh-on-return'
import { StudioFrame } from '@/app/ui/studio/studio-frame'
import { listAgreements } from '@/db/agreements/studio/list'
import { isLately } from '@/lib/agreement/studio/lately'
import { agreementsSentence } from '@/lib/agreement/studio/sentence'
import { studioTold } from '@/lib/agreement/studio/told'
import { remindedInWords } from '@/lib/season/reminded-words'
import { Ledger } from './ledger'
import { RemindAll } from './remind'

export const metadata: Metadata = { title: 'Agreements' }

const yearIn = (text: string | undefined) =>
	text !== undefined && /^2[0-3]\d\d$/.test(text) ? Number(text) : undefined

/** What came of reminding, as the address of the page says it. */
function cameOf(all: string | undefined, told: string | undefined): string | undefined {
	const [, reminded, lately] = /^(\d{1,5})\.(\d{1,5})$/.exec(all ?? '') ?? []
	if (reminded !== undefined) return remindedInWords({ reminded: Number(reminded), lately: Number(lately) })
	return told === 'not waiting for them' ? studioTold[told] : undefined
}

export default async function Agreements({ searchParams }: PageProps<'/studio/agreements'>) {
	const { who, frame } = await studioPage('/studio/agreements', 'change agreements')
	const { year, again, reminded, all, told, form } = await searchParams
	const now = stamp()
	const list = await listAgreements(who, yearIn(first(year)), now)
	if (list === undefined) hide(who)
	const waiting = list.rows.filter(({ state }) => state.is === 'to be signed')
	const came = cameOf(first(all), first(told))
	const { errors } = await attemptFor(who, form)
	return (
		<StudioFrame {...frame} here="Agreements">
			<RefreshOnReturn />
			<div className="grid items-end gap-x-12 gap-y-4 lg:grid-cols-2">
				<h1 className="text-5xl font-extrabold tracking-tighter">Agreements {list.year}</h1>
				<p className="text-lg">{agreementsSentence(list.rows.map(({ state }) => state))}</p>
			</div>
			<p className="no-print mt-4 flex flex-wrap gap-x-4 text-soft *:py-1">
				{list.years
					.filter((each) => each !== list.year)
					.map((each) => (
						<a key={each} href={`/studio/agreements?year=${each}`}>
							{each}
						</a>
					))}
				<a href={`/studio/agreements/renew?year=${list.year}`}>Renew for another year</a>
				<a href="/studio/agreements/template">The clauses</a>
			</p>
			{came && (
				<p className="said mt-5" role="status">
					{came}
				</p>
			)}
			<ErrorSummary errors={errors} />
			<div className="mt-6">
				<RemindAll
					year={list.year}
					waiting={waiting.length}
					lately={waiting.filter(({ remindedAt }) => isLately(remindedAt, now.at)).length}
				/>
			</div>
			<Ledger list={list} now={now.at} again={first(again)} reminded={first(reminded)} />
			<p className="mt-10 text-soft">An agreement begins on a client’s page.</p>
		</StudioFrame>
	)
}
