import 'server-only'
import type { z } from 'zod'
import { type Answered, type Answering, mayAnswer } from '@/db/proposals/answers/open'
import type { Viewer } from '@/lib/access/viewer'
import { read, type Typed } from '@/lib/forms/read'
import { id, isId } from '@/lib/units/id'
import { backToForm } from '../attempt'
import { wakeSender } from '../mail/sender'
import { formFields, refuse, seeOther, unclear } from '../respond'
import { viewer } from '../sign-in/session'
import { stamp } from '../start/clock'

type To = Pick<Answering, 'proposal' | 'browser'>

export type AnswerForm<T> = {
	readonly schema: z.ZodType<T>
	/** Fields that may come several times. */
	readonly lists: readonly string[]
	/** The page with the form, to which an error leads back. */
	readonly page: (fields: Typed) => string
	readonly give: (who: Viewer, to: To, form: T) => Promise<Answered>
}

/** The steps of every answer: who, may they, what does the form say, do it, tell them. */
export async function answering<T>(request: Request, text: string, form: AnswerForm<T>): Promise<Response> {
	const who = await viewer()
	if (who.is === 'nobody') return seeOther(`/sign-in?${new URLSearchParams({ to: `/proposal/${text}` })}`)
	if (!isId(text)) return refuse(request, 'hidden', who)
	const proposal = id<'proposal'>(text)
	const no = await mayAnswer(who, proposal, stamp())
	if (no !== null) return refuse(request, no.why, who)
	const fields = await formFields(request, form.lists)
	if (fields === undefined) return unclear(request, 'This is not a form of ours. Nothing was changed.')
	const filled = read(form.schema, fields)
	if (!filled.ok)
		return backToForm(who, `/proposal/${proposal}/${form.page(fields)}`, { typed: fields, errors: filled.errors })
	const browser = (request.headers.get('user-agent') ?? '').slice(0, 300)
	return tell(request, who, proposal, await form.give(who, { proposal, browser }, filled.value))
}

function tell(request: Request, who: Viewer, proposal: string, answered: Answered): Response {
	if (answered.ok) {
		wakeSender()
		return seeOther(`/proposal/${proposal}/done`)
	}
	if (answered.why === 'hidden' || answered.why === 'forbidden') return refuse(request, answered.why, who)
	return seeOther(`/proposal/${proposal}?${new URLSearchParams({ told: answered.why })}`)
}
