import type { Metadata } from 'next'
import { pickedOf } from '@/app/server/answers/picked'
import { first, idIn, isOpened, lookIn, signedIn } from '@/app/server/pages'
import { hide } from '@/app/server/refusal'
import { stamp } from '@/app/server/start/clock'
import { ClientFrame } from '@/app/ui/client-frame'
import { OfferPage } from '@/app/ui/offer/offer-page'
import { readOffer } from '@/db/proposals/read-offer'
import { markSeen } from '@/db/proposals/seen'
import { whoIs } from '@/db/studio/studio'
import { offerView } from '@/lib/proposal/offer/offer-view'
import { Erased, Told } from './told'

export const metadata: Metadata = { title: 'Your design' }

export default async function Proposal({ params, searchParams }: PageProps<'/proposal/[proposal]'>) {
	const { proposal: text } = await params
	const query = await searchParams
	const { revision, told } = query
	const who = await signedIn(`/proposal/${text}`, query)
	const proposal = idIn<'proposal'>(text)
	const page = await readOffer(who, proposal, stamp())
	if (page === undefined) hide(who)
	if (who.is === 'contact' && (await isOpened())) await markSeen(who, proposal, stamp())
	if (page.offer === undefined) return <Erased />
	const { offer, answer } = page
	const given = answer?.kind === 'approval' ? answer : undefined
	const may = who.is !== 'contact' ? 'preview' : who.clients.get(page.client) === 'approve' ? 'answer' : 'look'
	return (
		<ClientFrame studio={offer.studio} who={await whoIs(who)} season={offer.season}>
			<OfferPage
				view={offerView(offer, page.before, given ?? pickedOf(query))}
				path={`/proposal/${proposal}`}
				revision={page.hash}
				may={may}
				state={page.state.is}
				isChosen={given !== undefined}
				told={<Told page={page} read={first(revision)} told={first(told)} />}
				pictures={`/proposal/${proposal}/picture/${page.hash.slice(0, 16)}.svg`}
				look={lookIn(query, page.lengths)}
				lengths={page.lengths}
			/>
		</ClientFrame>
	)
}
