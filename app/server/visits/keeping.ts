import 'server-only'
import type { z } from 'zod'
import type { Incoming } from '@/db/clients/visits/photos/with-photos'
import type { Stamp } from '@/db/stamp'
import type { Denied } from '@/db/viewer'
import type { Viewer } from '@/lib/access/viewer'
import type { FieldErrors } from '@/lib/forms/read'
import type { Id } from '@/lib/units/id'
import { isId } from '@/lib/units/id'
import { backToForm } from '../attempt'
import { wakeSender } from '../mail/sender'
import { onceOnly } from '../once-only'
import { refuse, seeOther, unclear } from '../respond'
import { viewer } from '../sign-in/session'
import { stamp } from '../start/clock'
import { formData, photosForm } from './photos-form'

/** Where it went: on to a page, back to the form, or not theirs. */
export type Went = { readonly to: string } | { readonly errors: FieldErrors } | Denied

export type VisitForm<T> = {
	readonly schema: z.ZodType<T>
	readonly lists?: readonly string[]
	readonly sides: readonly Incoming['side'][]
	readonly most: 4 | 12
	/** The page with the form, to which an error leads back. */
	readonly page: string
	/** Whether they may at all, asked before a byte of the form is read. */
	readonly mayDo: (who: Viewer) => Promise<Denied | null>
	readonly keep: (who: Viewer, value: T, photos: readonly Incoming[], stamp: Stamp) => Promise<Went>
}

/** The steps of every form that brings photos: who, may they, what was typed and chosen, do it, tell, go. */
export async function keeping<T extends { once: Id<'once'> }>(
	request: Request,
	id: string,
	form: VisitForm<T>,
): Promise<Response> {
	const who = await viewer()
	if (who.is === 'nobody') return seeOther(`/sign-in?${new URLSearchParams({ to: form.page })}`)
	const no = isId(id) ? await form.mayDo(who) : ({ why: 'hidden' } as const)
	if (no !== null) return refuse(request, no.why, who)
	const sent = await formData(request)
	if (sent === undefined) return unclear(request, 'This is not a form of ours. Nothing was changed.')
	const filled = await photosForm(sent, { ...form, lists: form.lists ?? [] })
	if (!filled.ok) return backToForm(who, form.page, { typed: filled.typed, errors: filled.errors })
	const { value, photos } = filled
	const went = await onceOnly(() => form.keep(who, value, photos, stamp(value.once)))
	if ('why' in went) return refuse(request, went.why, who)
	if ('errors' in went) return backToForm(who, form.page, { typed: filled.typed, errors: went.errors })
	wakeSender()
	return seeOther(went.to)
}
