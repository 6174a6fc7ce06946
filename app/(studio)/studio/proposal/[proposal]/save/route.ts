import { json, refuse } from '@/app/server/respond'
import { onDesk } from '@/app/server/studio/on-desk'
import { saveDraft } from '@/db/proposals/draft'
import { draftText, saveBody } from '@/lib/forms/draft-form'

/** Saves the draft over the version that the editor read; a draft saved elsewhere meanwhile comes back with 409. */
export async function POST(
	request: Request,
	{ params }: RouteContext<'/studio/proposal/[proposal]/save'>,
): Promise<Response> {
	return onDesk(request, (await params).proposal, saveBody, async (who, proposal, body, stamp) => {
		const saved = await saveDraft(who, { proposal, ...body }, stamp)
		if (saved.ok) return json({ version: saved.version })
		if (saved.why !== 'saved elsewhere') return refuse(request, saved.why, who)
		return json({ version: saved.version, theirs: draftText(saved.theirs) }, 409)
	})
}
