import type { Metadata } from 'next'
import { first, idIn, signedIn } from '@/app/server/pages'
import { forbid, hide } from '@/app/server/refusal'
import { stamp } from '@/app/server/start/clock'
import { yearIn } from '@/app/server/studio/statement-file'
import { ClientFrame } from '@/app/ui/client-frame'
import { Bills } from '@/app/ui/studio/money/bills'
import { Statement } from '@/app/ui/studio/money/statement'
import { readAccount } from '@/db/money/read-account'
import { studioName, whoIs } from '@/db/studio/studio'
import { moneyFormat } from '@/lib/format/money'
import { statement } from '@/lib/money/statement/statement'
import { yearSpan } from '@/lib/money/statement/year'
import { billView } from '@/lib/money/words/account-bill'
import { balanceInWords } from '@/lib/money/words/balance'
import { statementView } from '@/lib/money/words/statement'
import { cents } from '@/lib/units/cents'

export const metadata: Metadata = { title: 'Your account' }

/** What a client owes, paid and will be asked for, and the statement of a year. */
export default async function Account({ params, searchParams }: PageProps<'/home/[client]/account'>) {
	const { client: text } = await params
	const query = await searchParams
	const who = await signedIn(`/home/${text}/account`, query)
	const page = await readAccount(who, idIn<'client'>(text), stamp())
	if (!page.ok) return page.why === 'forbidden' ? forbid(who) : hide(who)
	if (who.is !== 'contact') hide(who)
	const { account, ledger, client } = page
	const money = moneyFormat(page.currency)
	// What was asked for on paper, before the studio began to bill here, is no question to its client.
	const shown = page.bills.filter(({ isWanting }) => !isWanting)
	const year = yearIn(page, first(query.year))
	return (
		<ClientFrame studio={(await studioName(who)) ?? ''} who={await whoIs(who)} home={`/home/${client.id}`}>
			<div className="mx-auto max-w-3xl px-5 pt-[4vh]">
				<p className="no-print">
					<a className="inline-flex min-h-11 items-center" href={`/home/${client.id}`}>
						Back to {client.name}
					</a>
				</p>
				<h1 className="mt-2 text-5xl tracking-tight">Your account</h1>
				<p className="mt-4 text-2xl font-semibold tabular-nums">
					{balanceInWords(cents(account.openCents - account.creditCents), money)}
				</p>
				{account.openCents > 0 && page.payWords !== '' && (
					<p className="said mt-5 whitespace-pre-line wrap-anywhere">{page.payWords}</p>
				)}
				{shown.length > 0 && (
					<section className="mt-10" aria-labelledby="bills">
						<h2 id="bills" className="text-2xl">
							What is asked for, and when
						</h2>
						<Bills bills={shown.map((bill) => billView(bill, account, money))} invoices="/invoice" />
					</section>
				)}
				<Statement
					view={statementView(statement(ledger, yearSpan(year)), ledger, money)}
					year={year}
					years={page.years}
					path={`/home/${client.id}/account`}
				/>
			</div>
		</ClientFrame>
	)
}
