import type { Metadata } from 'next'
import { hide } from '@/app/server/refusal'
import { studioPage } from '@/app/server/studio/studio-page'
import { InvoiceSheet } from '@/app/ui/studio/money/invoice-sheet'
import { StudioFrame } from '@/app/ui/studio/studio-frame'
import { readInvoice } from '@/db/money/read-invoice'

export const metadata: Metadata = { title: 'Invoice' }

export default async function StudioInvoice({ params }: PageProps<'/studio/money/invoice/[number]'>) {
	const { number } = await params
	const { who, frame } = await studioPage(`/studio/money/invoice/${number}`, 'see accounts')
	const page = await readInvoice(who, number)
	if (!page.ok) hide(who)
	return (
		<StudioFrame {...frame} here="Money">
			<div className="max-w-3xl">
				<p className="no-print mb-4 text-soft">
					<a href={`/studio/money/${page.client}`}>{page.invoice.to.name}</a>
				</p>
				<InvoiceSheet {...page} />
			</div>
		</StudioFrame>
	)
}
