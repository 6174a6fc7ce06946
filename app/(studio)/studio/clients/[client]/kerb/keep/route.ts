import { backToForm } from '@/app/server/attempt'
import { json, refuse, seeOther, unclear } from '@/app/server/respond'
import { viewer } from '@/app/server/sign-in/session'
import { kerbSent, type Went, writeDown } from '@/app/server/studio/at-kerb'
import { formData } from '@/app/server/visits/photos-form'
import { clientPage } from '@/db/clients/read-clients'
import { id, isId } from '@/lib/units/id'

/** Told to the page's own script, which lets go of what it kept only when it hears that it is kept here. */
function toScript(went: Exclude<Went, { why: unknown }>): Response {
	if ('errors' in went) return json({ errors: went.errors }, 422)
	return went.kept === 'not theirs' ? json({ signedOut: true }, 401) : json({ kept: went.kept })
}

/** A place and its containers, as they were written down at the kerb. */
export async function POST(
	request: Request,
	{ params }: RouteContext<'/studio/clients/[client]/kerb/keep'>,
): Promise<Response> {
	const { client } = await params
	const who = await viewer()
	const [page, isScript] = [`/studio/clients/${client}/kerb`, request.headers.get('accept') === 'application/json']
	if (who.is === 'nobody')
		return isScript ? json({ signedOut: true }, 401) : seeOther(`/sign-in?${new URLSearchParams({ to: page })}`)
	if (!isId(client) || (await clientPage(who, id<'client'>(client))) === undefined)
		return refuse(request, 'hidden', who)
	const form = await formData(request)
	if (form === undefined) return unclear(request, 'This is not a form of ours. Nothing was changed.')
	const sent = kerbSent(form)
	const went = await writeDown(who, id<'client'>(client), sent)
	if ('why' in went) return refuse(request, went.why, who)
	if (isScript) return toScript(went)
	if ('errors' in went) return backToForm(who, page, { typed: sent.fields, errors: went.errors })
	const isNow = isId(went.kept)
	return seeOther(`${page}?${new URLSearchParams(isNow ? { told: 'sent', place: went.kept } : { told: 'before' })}`)
}
