import type { BillView } from '@/lib/money/words/account-bill'

type Props = {
	readonly bills: readonly BillView[]
	/** Path under which an invoice is shown. */
	readonly invoices: string
}

/** Instalments, deposits and balances with what is paid, open and to come. */
export function Bills({ bills, invoices }: Props) {
	return (
		<ul className="mt-3 border-t-2 border-ink">
			{bills.map(({ key, about, words, stands, isOpen, invoices: numbers }) => (
				<li key={key} className="flex flex-wrap justify-between gap-x-8 gap-y-1 border-b border-line py-3">
					<span className="min-w-0 wrap-anywhere tabular-nums">
						<b>{about}.</b> {words}{' '}
						{numbers.map((number) => (
							<a key={number} className="mr-3 inline-flex min-h-6 items-center" href={`${invoices}/${number}`}>
								Invoice {number}
							</a>
						))}
					</span>
					<span className={isOpen ? 'font-semibold' : 'text-soft'}>{stands}</span>
				</li>
			))}
		</ul>
	)
}
