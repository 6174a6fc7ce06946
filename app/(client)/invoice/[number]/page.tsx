import type { Metadata } from 'next'
import { signedIn } from '@/app/server/pages'
import { forbid, hide } from '@/app/server/refusal'
import { ClientFrame } from '@/app/ui/client-frame'
import { InvoiceSheet } from '@/app/ui/studio/money/invoice-sheet'
import { readInvoice } from '@/db/money/read-invoice'
import { studioName, whoIs } from '@/db/studio/studio'

export const metadata: Metadata = { title: 'Invoice' }

export default async function ClientInvoice({ params, searchParams }: PageProps<'/invoice/[number]'>) {
	const { number } = await params
	const who = await signedIn(`/invoice/${number}`, await searchParams)
	const page = await readInvoice(who, number)
	if (!page.ok) return page.why === 'forbidden' ? forbid(who) : hide(who)
	return (
		<ClientFrame studio={(await studioName(who)) ?? ''} who={await whoIs(who)} home={`/home/${page.client}`}>
			<div className="mx-auto max-w-3xl px-5 pt-[4vh]">
				<p className="no-print mb-4">
					<a className="inline-flex min-h-11 items-center" href={`/home/${page.client}/account`}>
						Back to your account
					</a>
				</p>
				<InvoiceSheet {...page} />
			</div>
		</ClientFrame>
	)
}
