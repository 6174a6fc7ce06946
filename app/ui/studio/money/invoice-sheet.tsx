import { fullDay } from '@/lib/format/day'
import { moneyFormat } from '@/lib/format/money'
import type { CreditNote } from '@/lib/money/invoice/credit-note'
import type { Invoice } from '@/lib/money/invoice/invoice'
import type { OpenInvoice } from '@/lib/money/ledger/account'
import { exemptInWords } from '@/lib/money/words/invoice'
import { amountRows, invoiceFacts } from '@/lib/money/words/sheet'

type Props = {
	readonly invoice: Invoice
	readonly notes: readonly CreditNote[]
	readonly standing: OpenInvoice
}

/** Where it stands, in a sentence. */
function standsInWords({ openCents, paidCents, leftCents }: OpenInvoice, money: (of: OpenInvoice['cents']) => string) {
	if (leftCents === 0) return 'Nothing of it is asked for any more.'
	if (openCents === 0) return 'Paid, thank you.'
	return paidCents === 0 ? `${money(openCents)} is open.` : `${money(paidCents)} is paid, ${money(openCents)} is open.`
}

/** An invoice as it was frozen, on one sheet that prints on Letter and on A4. */
export function InvoiceSheet({ invoice, notes, standing }: Props) {
	const money = moneyFormat(invoice.currency)
	const exempt = exemptInWords(invoice)
	return (
		<article className="invoice">
			<header className="flex flex-wrap items-start justify-between gap-x-12 gap-y-6">
				<div>
					<h1 className="text-4xl font-extrabold tracking-tight">Invoice {invoice.number}</h1>
					<p className="mt-1 text-soft">{invoice.from}</p>
					<p className="no-print">
						<a className="inline-flex min-h-11 items-center" href={`/invoice/${invoice.number}/pdf`}>
							Take it as a PDF
						</a>
					</p>
				</div>
				<address className="whitespace-pre-line not-italic wrap-anywhere">
					<b>{invoice.to.name}</b>
					{`\n${invoice.to.address}`}
				</address>
			</header>
			<dl className="mt-8 border-t-2 border-ink">
				{invoiceFacts(invoice).map(({ label, value }) => (
					<div key={label} className="flex gap-4 border-b border-line py-2">
						<dt className="w-32 shrink-0 font-semibold">{label}</dt>
						<dd className="wrap-anywhere tabular-nums">{value}</dd>
					</div>
				))}
			</dl>
			<table className="ledger mt-8">
				<thead>
					<tr className="text-sm text-soft">
						<th scope="col">What</th>
						<th scope="col" className="sum">
							Amount
						</th>
					</tr>
				</thead>
				<tbody>
					{amountRows(invoice, money).map(({ key, words, amount }) => (
						<tr key={key}>
							<td className="wrap-anywhere">{words}</td>
							<td className="sum">{amount}</td>
						</tr>
					))}
				</tbody>
				<tfoot>
					<tr className="text-lg font-bold">
						<td className="border-t-2 border-ink">Total</td>
						<td className="sum border-t-2 border-ink">{money(invoice.totalCents)}</td>
					</tr>
				</tfoot>
			</table>
			{exempt && <p className="mt-3">{exempt}</p>}
			{notes.map(({ number, on, reason, totalCents }) => (
				<p key={number} className="mt-3 wrap-anywhere">
					Credit note {number} of {fullDay(on)}: {money(totalCents)} less. {reason}
				</p>
			))}
			<p className="mt-6 text-lg font-semibold">{standsInWords(standing, money)}</p>
			{invoice.pay !== '' && standing.openCents > 0 && (
				<section className="whole mt-6" aria-labelledby="pay">
					<h2 id="pay" className="text-xl">
						How to pay
					</h2>
					<p className="mt-1 whitespace-pre-line wrap-anywhere">{invoice.pay}</p>
				</section>
			)}
		</article>
	)
}
