import type { z } from 'zod'
import { isHash } from '../record/is-hash'
import { fieldAt, placeEntry } from './answer/place-keys'

/** What was typed, kept so that an error loses nothing of it. */
export type Typed = Readonly<Record<string, string | readonly string[]>>
export type FieldErrors = Readonly<Record<string, string>>
/** A form that went wrong: what was typed and what is wrong with it. */
export type Attempt = { readonly typed: Typed; readonly errors: FieldErrors }
export type Read<T> = { readonly ok: true; readonly value: T } | { readonly ok: false; readonly errors: FieldErrors }

/** A form's fields as text; a name in `many` always as a list. Files are no text and are left out. */
export function typed(form: FormData, many: readonly string[] = []): Typed {
	const fields: Record<string, string | string[]> = {}
	for (const name of new Set(form.keys())) {
		const values = form.getAll(name).filter((value): value is string => typeof value === 'string')
		if (name.startsWith('$')) continue
		fields[name] = many.includes(name) ? values : (values[0] ?? '')
	}
	for (const name of many) fields[name] ??= []
	return fields
}

/** One sentence per field, the first that went wrong in it. */
export function read<T>(schema: z.ZodType<T>, fields: unknown): Read<T> {
	const result = schema.safeParse(fields)
	if (result.success) return { ok: true, value: result.data }
	const errors: Record<string, string> = {}
	for (const { path, message } of result.error.issues) errors[path.join('.') || 'form'] ??= message
	return { ok: false, errors }
}

/** Errors of one part of a body, by their paths within it. */
export function under(part: string, errors: FieldErrors): FieldErrors {
	const within = (path: string) => (path.startsWith(`${part}.`) ? path.slice(part.length + 1) : path)
	return Object.fromEntries(Object.entries(errors).map(([path, says]) => [within(path), says]))
}

/** A choice as the address of a page carries it: palette, what single places take, extras, containers left out, and of which revision. */
export function choiceQuery({ option, place = [], extra = [], without = [], revision }: Typed): URLSearchParams {
	const query = new URLSearchParams(typeof option === 'string' && option !== '' ? { option } : {})
	for (const [id, key] of [place]
		.flat()
		.map(placeEntry)
		.filter((each) => each !== undefined))
		query.append(fieldAt(id), key)
	for (const key of [extra].flat()) query.append('extra', key)
	for (const key of [without].flat()) query.append('without', key)
	if (typeof revision === 'string' && isHash(revision)) query.append('revision', revision)
	return query
}
