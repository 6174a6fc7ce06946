import type { Metadata } from 'next'
import { attemptFor } from '@/app/server/attempt'
import { first, idIn } from '@/app/server/pages'
import { hide } from '@/app/server/refusal'
import { stamp } from '@/app/server/start/clock'
import { yearIn } from '@/app/server/studio/statement-file'
import { studioPage } from '@/app/server/studio/studio-page'
import { ErrorSummary } from '@/app/ui/error-summary'
import { Bills } from '@/app/ui/studio/money/bills'
import { Statement } from '@/app/ui/studio/money/statement'
import { StudioFrame } from '@/app/ui/studio/studio-frame'
import { readAccount } from '@/db/money/read-account'
import { moneyFormat } from '@/lib/format/money'
import { standing } from '@/lib/money/ledger/effect'
import type { Ledger } from '@/lib/money/ledger/entry'
import { statement } from '@/lib/money/statement/statement'
import { yearSpan } from '@/lib/money/statement/year'
import { billView } from '@/lib/money/words/account-bill'
import { balanceInWords } from '@/lib/money/words/balance'
import { statementView } from '@/lib/money/words/statement'
import { cents } from '@/lib/units/cents'
import { Amounts, paymentId } from './amounts'
import { Undo } from './undo'

export const metadata: Metadata = { title: 'Account' }

/** Lines that a counter-entry may undo. */
const undoable = (ledger: Ledger) =>
	new Set<string>(
		standing(ledger)
			.filter(({ is }) => is !== 'invoice' && is !== 'credit note')
			.map(({ id }) => id),
	)

export default async function StudioAccount({ params, searchParams }: PageProps<'/studio/money/[client]'>) {
	const { client: text } = await params
	const { who, frame } = await studioPage(`/studio/money/${text}`, 'see accounts')
	const id = idIn<'client'>(text)
	const page = await readAccount(who, id, stamp())
	if (!page.ok) hide(who)
	const { year: asked, kept, form } = await searchParams
	const { account, ledger, years } = page
	const year = yearIn(page, first(asked))
	const money = moneyFormat(page.currency)
	const attempt = await attemptFor(who, form)
	const mayUndo = undoable(ledger)
	return (
		<StudioFrame {...frame} here="Money">
			<p className="text-soft">
				<a href="/studio/money">Money</a>
			</p>
			<h1 className="text-4xl font-extrabold tracking-tight wrap-anywhere">{page.client.name}</h1>
			<p className="mt-2 flex flex-wrap items-center gap-x-6 text-lg">
				{balanceInWords(cents(account.openCents - account.creditCents), money)}
				<a href={`#${paymentId}`} className="does no-print inline-flex items-center lg:hidden">
					A payment came
				</a>
			</p>
			{kept !== undefined && (
				<p className="said mt-5" role="status">
					Written down.
				</p>
			)}
			<ErrorSummary errors={attempt.errors} />
			<div className="mt-6 grid items-start gap-x-14 gap-y-10 lg:grid-cols-[1fr_24rem]">
				<div className="min-w-0">
					<h2 className="text-2xl">What is asked for, and when</h2>
					<Bills bills={page.bills.map((bill) => billView(bill, account, money))} invoices="/studio/money/invoice" />
					<Statement
						view={statementView(statement(ledger, yearSpan(year)), ledger, money)}
						year={year}
						years={years}
						path={`/studio/money/${id}`}
						acts={(entry) => mayUndo.has(entry) && <Undo client={id} entry={entry} attempt={attempt} />}
					/>
				</div>
				<Amounts
					key={String(form)}
					client={id}
					today={page.today}
					invoices={account.invoices}
					attempt={attempt}
					money={money}
				/>
			</div>
		</StudioFrame>
	)
}
