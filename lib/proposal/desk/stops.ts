import type { DraftText } from '../../forms/draft-form'
import { named } from '../../forms/named'
import type { FieldErrors } from '../../forms/read'
import type { Problem } from '../problem'
import { fieldOf } from './field-of'
import { fieldsOf, inWords, type Names } from './places-in'

/** One thing that stops publishing, and the box of the desk that it is about: its path with every step by number. */
export type Stop = { readonly says: string; readonly field: string }

/** A sentence that is said of several boxes stands once, at the first. */
const once = (stops: readonly Stop[]): Stop[] =>
	stops.filter(({ says }, index) => stops.findIndex((each) => each.says === says) === index)

/**
 * What stops a draft as it stands on the desk. While something cannot be read that alone is told, for nothing else is
 * known of the draft until then.
 */
export function stopsOf(
	draft: DraftText,
	{ errors, problems, names }: { errors: FieldErrors; problems: readonly Problem[]; names: Names },
): readonly Stop[] {
	const unread = Object.entries(errors)
	if (unread.length === 0) return once(problems.map(({ at, says }) => ({ says, field: fieldOf(draft, at) })))
	const fields = fieldsOf(draft, names)
	return unread.map(([field, says]) => {
		const known = fields.get(field)
		return { says: named(known && inWords(known.named), says), field }
	})
}
