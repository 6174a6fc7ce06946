import type { DraftText } from '../../../forms/draft-form'
import { fieldOf } from '../field-of'
import type { Removed } from './removed'

type NotesAt = Extract<Removed, { is: 'note' }>['notes']

function ofNotes(draft: DraftText, [first]: NotesAt): string | null {
	if (first === undefined) return null
	const { option, container } = first.note
	return fieldOf(draft, `options.${option}.found.${container}`)
}

/** The first box of what was put back into `draft`, by its path; null where nothing new is there to go to. */
export function backAt(draft: DraftText, removed: Removed): string | null {
	switch (removed.is) {
		case 'palette':
			return `options.${Math.min(removed.at, draft.options.length - 1)}.name`
		case 'extra':
			return `extras.${Math.min(removed.at, draft.extras.length - 1)}.name`
		case 'colour':
			return fieldOf(draft, `options.${removed.of}.palette.${removed.at}.hex`)
		case 'line': {
			const { of, at } = removed
			const list = 'extra' in of ? `extras.${of.extra}` : `options.${of.option}.pots.${of.container}`
			return fieldOf(draft, `${list}.lines.${at}.material`)
		}
		case 'container':
			return `containers.${removed.container.id}`
		case 'note':
			return ofNotes(draft, removed.notes)
		case 'pots':
			return null
		default:
			return removed satisfies never
	}
}
