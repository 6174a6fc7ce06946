import type { DraftText } from '../../forms/draft-form'

type Keyed = readonly { readonly key: string }[]

const numbered = (items: Keyed, key: string): string => {
	const at = items.findIndex((each) => each.key === key)
	return at < 0 ? key : String(at)
}

/** A place in a draft by keys, as its box on the desk has it, by numbers; a pot that is empty keeps its container's id. */
export function fieldOf(draft: DraftText, at: string): string {
	const [part = '', key, within, container, ...rest] = at.split('.')
	if (key === undefined || (part !== 'options' && part !== 'extras')) return at
	const head = `${part}.${numbered(draft[part], key)}`
	if (within !== 'pots' || container === undefined || rest.length === 0)
		return [head, within, container, ...rest].filter((step) => step !== undefined).join('.')
	const option = draft.options.find((each) => each.key === key)
	const pot = option?.pots.findIndex((each) => each.container === container) ?? -1
	return [head, within, pot < 0 ? container : pot, ...rest].join('.')
}
