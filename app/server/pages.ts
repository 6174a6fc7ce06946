import 'server-only'
import { headers } from 'next/headers'
import { notFound, redirect } from 'next/navigation'
import type { Look } from '@/app/ui/offer/drawn'
import { decide } from '@/lib/access/decide'
import type { Act } from '@/lib/access/table'
import type { Viewer } from '@/lib/access/viewer'
import type { LengthUnit } from '@/lib/format/length'
import { localPath } from '@/lib/forms/local-path'
import type { ClientId } from '@/lib/units/id'
import { id, isId } from '@/lib/units/id'
import { forbid, hide } from './refusal'
import { viewer } from './sign-in/session'

type Text = string | string[] | undefined
/** What a mailed link says beside its path: whom it was sent to, and which cover it shows. */
type Mailed = { readonly for?: Text; readonly cover?: Text }

/** Whoever is signed in; everybody else goes to the sign-in page and from there to `path`, whether or not it exists. */
export async function signedIn(path: string, mailed: Mailed = {}): Promise<Viewer> {
	const who = await viewer()
	if (who.is !== 'nobody') return who
	const query = new URLSearchParams({ to: localPath(path) })
	for (const name of ['for', 'cover'] as const) {
		const said = mailed[name]
		if (typeof said === 'string') query.set(name, said)
	}
	redirect(`/sign-in?${query}`)
}

/** The id in an address; 404 for what is none. */
export function idIn<Of extends string>(text: string) {
	if (!isId(text)) notFound()
	return id<Of>(text)
}

/** 404 or 403 unless the table lets the viewer do it; for pages whose data alone does not say. */
export function mustMay(who: Viewer, act: Act, client: ClientId | null): void {
	const said = decide(who, act, client)
	if (said === 'hidden') hide(who)
	if (said === 'forbidden') forbid(who)
}

export const first = (value: string | string[] | undefined): string | undefined =>
	Array.isArray(value) ? value[0] : value
export const all = (value: string | string[] | undefined): string[] =>
	value === undefined ? [] : [value].flat().slice(0, 100)

/** Of a browser that does not say what for it asks (Fetch Metadata, Safari before 16.4): it wants a page first of all, not a part of one. */
const isDocument = (sent: Headers): boolean =>
	(sent.get('sec-fetch-dest') ?? ((sent.get('accept') ?? '').startsWith('text/html') ? 'document' : '')) ===
		'document' && !sent.has('rsc')

/** True for a document that a person opened, and no prefetch or part of a page. */
export async function isOpened(): Promise<boolean> {
	const sent = await headers()
	const purpose = sent.get('sec-purpose') ?? sent.get('purpose') ?? ''
	return isDocument(sent) && !sent.has('next-router-prefetch') && !purpose.includes('prefetch')
}

/** How the address of a page asks to look at its pictures: an hour, else the window's; a measure in the studio's unit. */
export function lookIn(address: { readonly hour?: Text; readonly measure?: Text }, lengths: LengthUnit): Look {
	const hour = first(address.hour)
	return {
		hour: hour === 'day' || hour === 'evening' ? hour : null,
		measure: first(address.measure) === 'show' ? lengths : 'none',
	}
}
