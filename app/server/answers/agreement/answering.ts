import 'server-only'
import type { z } from 'zod'
import { maySign, type Refused } from '@/db/agreements/signing/step'
import type { Denied } from '@/db/viewer'
import type { Viewer } from '@/lib/access/viewer'
import type { SigningRefusal } from '@/lib/agreement/signing/told'
import { read } from '@/lib/forms/read'
import { type Id, id, isId } from '@/lib/units/id'
import { backToForm } from '../../attempt'
import { wakeSender } from '../../mail/sender'
import { formFields, refuse, seeOther, unclear } from '../../respond'
import { viewer } from '../../sign-in/session'
import { stamp } from '../../start/clock'

export type AgreementForm<T> = {
	readonly schema: z.ZodType<T>
	/** The page with the form, below the agreement's own. */
	readonly page: string
	/** Where it leads on to when it went through. */
	readonly next: string
	readonly give: (who: Viewer, agreement: Id<'agreement'>, form: T) => Promise<{ readonly ok: true } | Refused | Denied>
}

/** Refusals that another page puts right: it is shown with the reason. */
const pages: Partial<Record<SigningRefusal, string>> = {
	'other words': '/consent',
	'not agreed to': '/consent',
	'proof is old': '/sign',
}

/** The steps of each answer: who, may they, what does the form say, do it, tell them. */
export async function answering<T>(
	request: Request,
	text: string,
	{ schema, page, next, give }: AgreementForm<T>,
): Promise<Response> {
	const who = await viewer()
	if (who.is === 'nobody') return seeOther(`/sign-in?${new URLSearchParams({ to: `/agreement/${text}` })}`)
	if (!isId(text)) return refuse(request, 'hidden', who)
	const [agreement, path] = [id<'agreement'>(text), `/agreement/${text}`]
	const no = await maySign(who, agreement, stamp())
	if (no !== null) return refuse(request, no.why, who)
	const fields = await formFields(request)
	if (fields === undefined) return unclear(request, 'This is not a form of ours. Nothing was changed.')
	const filled = read(schema, fields)
	if (!filled.ok) return backToForm(who, `${path}/${page}`, { typed: fields, errors: filled.errors })
	const given = await give(who, agreement, filled.value)
	if (given.ok) {
		wakeSender()
		return seeOther(`${path}${next}`)
	}
	const { why } = given
	if (why === 'hidden' || why === 'forbidden') return refuse(request, why, who)
	return seeOther(`${path}${pages[why] ?? ''}?${new URLSearchParams({ told: why })}`)
}
