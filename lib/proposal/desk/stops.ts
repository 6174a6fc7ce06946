import type { DraftText } from '../../forms/draft-form'
import { named } from '../../forms/named'
import type { FieldErrors } from '../../forms/read'
import type { Problem } from '../problem'
import { fieldsOf, inWords, type Names } from './places-in'

/** One thing that stops publishing, and the box of the desk that it is about: its path with every step by number. */
export type Stop = { readonly says: string; readonly field: string }

type Keyed = readonly { readonly key: string }[]

const numbered = (items: Keyed, key: string): string => {
	const at = items.findIndex((each) => each.key === key)
	return at < 0 ? key : String(at)
}

/** A problem's place, by keys, as the box has it, by numbers; a pot that is empty keeps its container's id. */
function fieldOf(draft: DraftText, at: string): string {
	const [part = '', key, within, container, ...rest] = at.split('.')
	if (key === undefined || (part !== 'options' && part !== 'extras')) return at
	const head = `${part}.${numbered(draft[part], key)}`
	if (within !== 'pots' || container === undefined || rest.length === 0)
		return [head, within, container, ...rest].filter((step) => step !== undefined).join('.')
	const option = draft.options.find((each) => each.key === key)
	const pot = option?.pots.findIndex((each) => each.container === container) ?? -1
	return [head, within, pot < 0 ? container : pot, ...rest].join('.')
}

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
