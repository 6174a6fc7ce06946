import 'server-only'
import { forbidden, notFound, redirect } from 'next/navigation'
import { type OfferPage, readOffer } from '@/db/proposals/read-offer'
import { whoIs } from '@/db/studio/studio'
import { decide } from '@/lib/access/decide'
import type { Viewer } from '@/lib/access/viewer'
import type { Offer } from '@/lib/proposal/offer/offer'
import { idIn, signedIn } from '../pages'
import { stamp } from '../start/clock'

export type Answerable = {
	readonly who: Viewer
	readonly me: { readonly name: string; readonly address: string } | undefined
	readonly path: string
	readonly page: OfferPage
	readonly offer: Offer
}

/** What every page on the way to an answer needs; 403 for who may only look, back to the proposal when it takes no answer. */
export async function answerable(text: string, step: string): Promise<Answerable> {
	const who = await signedIn(`/proposal/${text}/${step}`)
	const proposal = idIn<'proposal'>(text)
	const page = await readOffer(who, proposal, stamp())
	if (page === undefined) notFound()
	if (decide(who, 'answer the proposal', page.client) !== 'may') forbidden()
	const path = `/proposal/${proposal}`
	if (page.offer === undefined || page.state.is !== 'waiting for an answer') redirect(path)
	return { who, me: await whoIs(who), path, page, offer: page.offer }
}
