import 'server-only'
import { redirect } from 'next/navigation'
import type { z } from 'zod'
import { keepAttempt } from '@/db/house/attempts'
import type { Denied } from '@/db/viewer'
import type { Act } from '@/lib/access/table'
import type { Viewer } from '@/lib/access/viewer'
import { type FieldErrors, read, typed } from '@/lib/forms/read'
import { onceOnly } from '../once-only'
import { mustMay } from '../pages'
import { forbid, hide } from '../refusal'
import { viewer } from '../sign-in/session'
import { stamp } from '../start/clock'
import { env } from '../start/env'

/** Where it went: on to a page, or back to the form with what is wrong. */
export type Went = { readonly to: string } | { readonly errors: FieldErrors }

type Spec<T> = {
	readonly act: Act
	readonly schema: z.ZodType<T>
	readonly lists?: readonly string[]
	/** The page of the form, to which an error leads back. */
	readonly page: (fields: Record<string, string | readonly string[]>) => string
}

/** The steps of every action of the studio: who, may they, what was typed, do it, go. */
export async function studioAction<T>(
	form: FormData,
	{ act, schema, lists, page }: Spec<T>,
	run: (who: Viewer, value: T) => Promise<Went>,
): Promise<never> {
	const who = await viewer()
	if (who.is === 'nobody') redirect('/sign-in')
	mustMay(who, act, null)
	const fields = { ...typed(form, lists) }
	const filled = read(schema, fields)
	const went = filled.ok ? await onceOnly(() => run(who, filled.value)) : { errors: filled.errors }
	if ('to' in went) redirect(went.to)
	const key = stamp().id<'once'>()
	await keepAttempt(who, key, { typed: fields, errors: went.errors }, stamp())
	// What a field holds may be no address: read as one, it can be sent as one.
	const { pathname, search } = new URL(page(fields), env().siteUrl)
	redirect(`${pathname}${search}${search === '' ? '?' : '&'}form=${key}`)
}

/** What the data layer would not let the viewer see or do ends the request as such. */
export async function refused({ why }: Denied): Promise<never> {
	const who = await viewer()
	return why === 'hidden' ? hide(who) : forbid(who)
}

export const isDenied = (result: { readonly ok: boolean; readonly why?: unknown }): result is Denied =>
	!result.ok && (result.why === 'hidden' || result.why === 'forbidden')
