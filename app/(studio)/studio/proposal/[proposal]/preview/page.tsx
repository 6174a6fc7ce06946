import type { Metadata } from 'next'
import { pickedOf } from '@/app/server/answers/picked'
import { idIn, lookIn, signedIn } from '@/app/server/pages'
import { hide } from '@/app/server/refusal'
import { stamp } from '@/app/server/start/clock'
import { ClientFrame } from '@/app/ui/client-frame'
import { OfferPage } from '@/app/ui/offer/offer-page'
import { previewOffer } from '@/db/proposals/desk/price-draft'
import { readDraft } from '@/db/proposals/draft'
import { readSettings, whoIs } from '@/db/studio/studio'
import { offerView } from '@/lib/proposal/offer/offer-view'

export const metadata: Metadata = { title: 'Preview' }

/** The saved draft on exactly the client's page; what a client could press rests. */
export default async function Preview({ params, searchParams }: PageProps<'/studio/proposal/[proposal]/preview'>) {
	const { proposal: text } = await params
	const path = `/studio/proposal/${text}/preview`
	const who = await signedIn(path)
	const proposal = idIn<'proposal'>(text)
	const kept = await readDraft(who, proposal, stamp())
	const offer = kept && (await previewOffer(who, { proposal, draft: kept.draft }, stamp()))
	if (offer === undefined) hide(who)
	const query = await searchParams
	const lengths = (await readSettings(who))?.lengths ?? 'in'
	const told = (
		<p className="said mt-8">
			A preview of the saved draft: nobody else sees it. <a href={`/studio/proposal/${proposal}`}>Back to the desk</a>
		</p>
	)
	return (
		<ClientFrame studio={offer.studio} who={await whoIs(who)} season={offer.season} home="/studio">
			<OfferPage
				view={offerView(offer, undefined, pickedOf(query))}
				path={path}
				may="preview"
				state="waiting for an answer"
				told={told}
				pictures={`${path}/picture`}
				look={lookIn(query, lengths)}
				lengths={lengths}
			/>
		</ClientFrame>
	)
}
