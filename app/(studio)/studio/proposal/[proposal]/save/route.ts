import { json, jsonBody, refuse } from '@/app/server/respond'
import { viewer } from '@/app/server/sign-in/session'
import { stamp } from '@/app/server/start/clock'
import { readDraft, saveDraft } from '@/db/proposals/draft'
import { draftText, saveBody } from '@/lib/forms/draft-form'
import { read, under } from '@/lib/forms/read'
import { id, isId } from '@/lib/units/id'

/** Saves the draft over the version that the editor read; a draft saved elsewhere meanwhile comes back with 409. */
export async function POST(
	request: Request,
	{ params }: RouteContext<'/studio/proposal/[proposal]/save'>,
): Promise<Response> {
	const { proposal: text } = await params
	const who = await viewer()
	if (who.is === 'nobody') return json({ signedOut: true }, 401)
	if (!isId(text)) return refuse(request, 'hidden', who)
	const proposal = id<'proposal'>(text)
	if ((await readDraft(who, proposal, stamp())) === undefined) return refuse(request, 'hidden', who)
	const body = read(saveBody, await jsonBody(request))
	if (!body.ok) return json({ errors: under('draft', body.errors) }, 422)
	const saved = await saveDraft(who, { proposal, ...body.value }, stamp())
	if (saved.ok) return json({ version: saved.version })
	if (saved.why !== 'saved elsewhere') return refuse(request, saved.why, who)
	return json({ version: saved.version, theirs: draftText(saved.theirs) }, 409)
}
