import 'server-only'
import { redirect } from 'next/navigation'
import { readAgreement } from '@/db/agreements/read'
import { whoIs } from '@/db/studio/studio'
import { decide } from '@/lib/access/decide'
import type { Viewer } from '@/lib/access/viewer'
import type { ShownDocument } from '@/lib/agreement/document/shown'
import type { AgreementPage } from '@/lib/agreement/signing/page'
import type { Id } from '@/lib/units/id'
import { first, idIn, signedIn } from '../../pages'
import { forbid, hide } from '../../refusal'
import { stamp } from '../../start/clock'

export type Read = {
	readonly who: Viewer
	readonly me: { readonly name: string; readonly address: string } | undefined
	readonly id: Id<'agreement'>
	readonly path: string
	readonly page: AgreementPage
}

type Query = Readonly<Record<string, string | string[] | undefined>>

/** What every page of an agreement needs; 404 for whoever may not see it, the same as for none. */
export async function agreementAt(text: string, rest = '', query: Query = {}): Promise<Read> {
	const who = await signedIn(`/agreement/${text}${rest}`, query)
	const id = idIn<'agreement'>(text)
	const page = await readAgreement(who, id, stamp())
	if (page === undefined) hide(who)
	return { who, me: await whoIs(who), id, path: `/agreement/${id}`, page }
}

export type Answerable = Read & { readonly document: ShownDocument }

/** The same on the way to a signature: 403 for who may only look, back to the agreement when it takes none or another text stands than was read. */
export async function answerableAt(text: string, rest: string, query: Query): Promise<Answerable> {
	const read = await agreementAt(text, rest)
	const { who, path, page } = read
	if (decide(who, 'sign the agreement', page.client) !== 'may') forbid(who)
	if (page.document === undefined || page.state.is !== 'to be signed') redirect(path)
	const wanted = first(query.document)
	if (wanted !== undefined && wanted !== page.hash)
		redirect(`${path}?${new URLSearchParams({ told: 'a newer document stands' })}`)
	return { ...read, document: page.document }
}
