import type { Metadata } from 'next'
import { attemptFor } from '@/app/server/attempt'
import { first } from '@/app/server/pages'
import { hide } from '@/app/server/refusal'
import { stamp } from '@/app/server/start/clock'
import { studioPage } from '@/app/server/studio/studio-page'
import { ErrorSummary } from '@/app/ui/error-summary'
import { StudioFrame } from '@/app/ui/studio/studio-frame'
import { type MoneyPage, readMoney } from '@/db/money/read-money'
import { moneyFormat } from '@/lib/format/money'
import { billView } from '@/lib/money/words/account-bill'
import { billedInWords, remindedLateInWords } from '@/lib/money/words/wanting'
import { dayOf } from '@/lib/units/day'
import { Late } from './late'
import { Open } from './open'
import { WantingList } from './wanting'

export const metadata: Metadata = { title: 'Money' }

/** What came of it, as the address of the page says it. */
function cameOf(billed: string | undefined, reminded: string | undefined): string | undefined {
	const [, invoices, credits] = /^(\d{1,5})\.(\d{1,5})$/.exec(billed ?? '') ?? []
	if (invoices !== undefined) return billedInWords({ invoices: Number(invoices), credits: Number(credits) })
	return /^\d{1,5}$/.test(reminded ?? '') ? remindedLateInWords(Number(reminded)) : undefined
}

function viewsOf({ clients, currency }: MoneyPage) {
	const money = moneyFormat(currency)
	return clients.map(({ id, name, account, bills }) => {
		const viewOf = (isOf: (bill: (typeof bills)[number]) => boolean) =>
			bills.filter(isOf).map((bill) => billView(bill, account, money))
		const [next] = viewOf(({ isWanting, invoices }) => !isWanting && invoices.length === 0)
		return { id, name, account, next, wanting: viewOf(({ isWanting }) => isWanting) }
	})
}

export default async function Money({ searchParams }: PageProps<'/studio/money'>) {
	const { who, frame } = await studioPage('/studio/money', 'see accounts')
	const page = await readMoney(who, stamp())
	if (page === undefined) hide(who)
	const { billed, reminded, form } = await searchParams
	const came = cameOf(first(billed), first(reminded))
	const { errors } = await attemptFor(who, form)
	const views = viewsOf(page)
	const money = moneyFormat(page.currency)
	const last = page.clients.map(({ id, remindedAt }) => [id, remindedAt && dayOf(remindedAt, page.timeZone)] as const)
	return (
		<StudioFrame {...frame} here="Money">
			<h1 className="text-4xl font-extrabold tracking-tight">Money</h1>
			{came && (
				<p className="said mt-5" role="status">
					{came}
				</p>
			)}
			<ErrorSummary errors={errors} />
			<Late
				late={page.late}
				names={new Map(page.clients.map(({ id, name }) => [id, name]))}
				reminded={new Map(last)}
				money={money}
			/>
			<WantingList
				wanting={views.flatMap(({ id, name, wanting }) => (wanting.length === 0 ? [] : [{ id, name, bills: wanting }]))}
				hasPayWords={page.hasPayWords}
				since={page.since}
			/>
			<Open clients={views} money={money} />
		</StudioFrame>
	)
}
