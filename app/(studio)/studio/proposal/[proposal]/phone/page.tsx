import type { Metadata } from 'next'
import { redirect } from 'next/navigation'
import { pickedOf } from '@/app/server/answers/picked'
import { attemptFor } from '@/app/server/attempt'
import { idIn } from '@/app/server/pages'
import { hide } from '@/app/server/refusal'
import { stamp } from '@/app/server/start/clock'
import { studioPage } from '@/app/server/studio/studio-page'
import { StudioFrame } from '@/app/ui/studio/studio-frame'
import { readOffer } from '@/db/proposals/read-offer'
import { offerView } from '@/lib/proposal/offer/offer-view'
import { changeParts } from '@/lib/proposal/offer/parts'
import { Change } from './change'
import { Choice } from './choice'
import { Skip } from './skip'
import { Yes } from './yes'

export const metadata: Metadata = { title: 'An answer by phone' }

/** What a client said on the phone, written down as the studio's word and never as theirs. */
export default async function Phone({ params, searchParams }: PageProps<'/studio/proposal/[proposal]/phone'>) {
	const { proposal: text } = await params
	const path = `/studio/proposal/${text}/phone`
	const { who, frame } = await studioPage(path, 'answer by phone')
	const id = idIn<'proposal'>(text)
	const page = await readOffer(who, id, stamp())
	if (page === undefined) hide(who)
	const { offer, hash } = page
	if (offer === undefined || page.state.is !== 'waiting for an answer')
		redirect(`/studio/proposal/${id}?${new URLSearchParams({ told: 'not waiting for them' })}`)
	const query = await searchParams
	const view = offerView(offer, undefined, pickedOf(query))
	const attempt = await attemptFor(who, query.form)
	const of = { proposal: id, revision: hash, attempt }
	const isBusiness = offer.options.some(({ prices }) => prices.payer.kind === 'business')
	return (
		<StudioFrame {...frame} here="Season" season={offer.season.quarter}>
			<p>
				<a href={`/studio/proposal/${id}`}>Back to {offer.client}</a>
			</p>
			<h1 className="mt-1 text-4xl font-extrabold tracking-tight">An answer by phone</h1>
			<p className="mt-3 max-w-2xl text-lg">
				{offer.client} answers “{offer.title}”, revision {page.number}. It is kept as written down by you on their word,
				and they have a receipt by mail that says so.
			</p>
			<div className="mt-8 grid max-w-6xl gap-x-16 gap-y-12 lg:grid-cols-2">
				<section aria-labelledby="yes">
					<h2 id="yes" className="text-2xl">
						They approve
					</h2>
					<Choice view={view} path={path} />
					<Yes view={view} of={of} isBusiness={isBusiness} />
				</section>
				<div>
					<Change parts={changeParts(offer)} of={of} />
					<Skip of={of} season={offer.season} />
				</div>
			</div>
		</StudioFrame>
	)
}
