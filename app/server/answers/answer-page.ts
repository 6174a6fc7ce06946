import 'server-only'
import { redirect } from 'next/navigation'
import { type OfferPage, readOffer } from '@/db/proposals/read-offer'
import { whoIs } from '@/db/studio/studio'
import { decide } from '@/lib/access/decide'
import type { Viewer } from '@/lib/access/viewer'
import type { Offer } from '@/lib/proposal/offer/offer'
import { first, idIn, signedIn } from '../pages'
import { forbid, hide } from '../refusal'
import { stamp } from '../start/clock'

export type Answerable = {
	readonly who: Viewer
	readonly me: { readonly name: string; readonly address: string } | undefined
	readonly path: string
	readonly page: OfferPage
	readonly offer: Offer
}

/** The revision that was read, as the address of the page says it; one that was typed by hand may say none. */
type Read = string | string[] | undefined

/**
 * What every page on the way to an answer needs; 403 for who may only look, back to the proposal when it takes no
 * answer, or when another revision stands than the one that was read.
 */
export async function answerable(text: string, revision: Read): Promise<Answerable> {
	const who = await signedIn(`/proposal/${text}`)
	const proposal = idIn<'proposal'>(text)
	const page = await readOffer(who, proposal, stamp())
	if (page === undefined) hide(who)
	if (decide(who, 'answer the proposal', page.client) !== 'may') forbid(who)
	const path = `/proposal/${proposal}`
	if (page.offer === undefined || page.state.is !== 'waiting for an answer') redirect(path)
	if (revision !== undefined && first(revision) !== page.hash)
		redirect(`${path}?${new URLSearchParams({ told: 'a newer revision stands' })}`)
	return { who, me: await whoIs(who), path, page, offer: page.offer }
}
