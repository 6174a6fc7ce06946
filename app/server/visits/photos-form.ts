import 'server-only'
import type { z } from 'zod'
import type { Incoming } from '@/db/clients/visits/photos/with-photos'
import { type FieldErrors, read, type Typed, typed } from '@/lib/forms/read'
import { tooManyPhotos } from '@/lib/visit/form'
import { encodePhotos, type Sent } from './encode'

type Spec<T> = {
	readonly schema: z.ZodType<T>
	readonly lists: readonly string[]
	/** The fields that bring photos, by what those show. */
	readonly sides: readonly Incoming['side'][]
	readonly most: 4 | 12
}

export type PhotosForm<T> =
	| { readonly ok: true; readonly typed: Typed; readonly value: T; readonly photos: readonly Incoming[] }
	| { readonly ok: false; readonly typed: Typed; readonly errors: FieldErrors }

/** A file field that was left empty sends one empty file. */
const filesIn = (form: FormData, side: Incoming['side']): Sent[] =>
	form.getAll(side).flatMap((file) => (file instanceof File && file.size > 0 ? [{ side, file }] : []))

/** Words and photos of one form; the photos are looked at only when all else is right. */
export async function photosForm<T>(form: FormData, { schema, lists, sides, most }: Spec<T>): Promise<PhotosForm<T>> {
	const all = typed(form, lists)
	const fields = Object.fromEntries(Object.entries(all).filter(([name]) => !sides.some((side) => side === name)))
	const sent = sides.flatMap((side) => filesIn(form, side))
	const filled = read(schema, fields)
	const [first] = sent
	const many = sent.length > most && first ? { [first.side]: tooManyPhotos(most) } : {}
	const errors = { ...(filled.ok ? {} : filled.errors), ...many }
	if (!filled.ok || Object.keys(errors).length > 0) return { ok: false, typed: fields, errors }
	const encoded = await encodePhotos(sent)
	return encoded.ok
		? { ok: true, typed: fields, value: filled.value, photos: encoded.photos }
		: { ok: false, typed: fields, errors: { [encoded.side]: encoded.says } }
}

/** Undefined when what was posted cannot be read as a form. */
export async function formData(request: Request): Promise<FormData | undefined> {
	try {
		return await request.formData()
	} catch {
		return undefined
	}
}
