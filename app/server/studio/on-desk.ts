import 'server-only'
import type { z } from 'zod'
import { readDraft } from '@/db/proposals/draft'
import type { Stamp } from '@/db/stamp'
import type { Viewer } from '@/lib/access/viewer'
import { read, under } from '@/lib/forms/read'
import { id, isId, type ProposalId } from '@/lib/units/id'
import { json, jsonBody, refuse } from '../respond'
import { viewer } from '../sign-in/session'
import { stamp } from '../start/clock'

type Run<Body> = (who: Viewer, proposal: ProposalId, body: Body, stamp: Stamp) => Promise<Response | undefined>

/** What the editor asks of the server about the draft on the desk: who, may they, what was typed, do it. */
export async function onDesk<Body>(
	request: Request,
	text: string,
	schema: z.ZodType<Body>,
	run: Run<Body>,
): Promise<Response> {
	const who = await viewer()
	if (who.is === 'nobody') return json({ signedOut: true }, 401)
	if (!isId(text)) return refuse(request, 'hidden', who)
	const proposal = id<'proposal'>(text)
	if ((await readDraft(who, proposal, stamp())) === undefined) return refuse(request, 'hidden', who)
	const body = read(schema, await jsonBody(request))
	if (!body.ok) return json({ errors: under('draft', body.errors) }, 422)
	return (await run(who, proposal, body.value, stamp())) ?? refuse(request, 'hidden', who)
}
