import { type Id, id } from '../units/id'
import { sha256 } from './hash'

/** The key of one of many things that a form does: the same form and the same thing, the same key (UUID v8, RFC 9562). */
export function onceFor(form: Id<'once'>, thing: string): Id<'once'> {
	const hex = sha256(form, ' ', thing)
	const variant = ((Number.parseInt(hex.slice(16, 17), 16) % 4) + 8).toString(16)
	const parts = [hex.slice(0, 8), hex.slice(8, 12), `8${hex.slice(13, 16)}`, `${variant}${hex.slice(17, 20)}`]
	return id<'once'>([...parts, hex.slice(20, 32)].join('-'))
}
