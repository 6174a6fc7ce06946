import { capital } from '../../../format/words'
import type { Names } from '../places-in'
import type { LinesOf, Removed } from './removed'

const quoted = (name: string, otherwise: string, before = '') => (name === '' ? otherwise : `${before}“${name}”`)

/** What can be put back, in words: "noble fir", "the colour “Bone”". */
export function calledRemoved(removed: Removed, names: Names): string {
	switch (removed.is) {
		case 'palette':
			return quoted(removed.option.name, 'the palette')
		case 'colour':
			return quoted(removed.colour.name, 'the colour', 'the colour ')
		case 'line':
			return names.get(removed.line.material) ?? 'the line'
		case 'extra':
			return quoted(removed.extra.name, 'the extra', 'the extra ')
		case 'container':
			return names.get(removed.container.id) ?? 'the container'
		case 'note':
			return removed.notes.length === 1 ? 'the note' : 'the notes'
		case 'pots':
			return 'what was there before'
		default:
			return removed satisfies never
	}
}

export function removedInWords(removed: Removed, names: Names): string {
	if (removed.is === 'pots') return 'Something else is in the containers now.'
	const was = removed.is === 'note' && removed.notes.length > 1 ? 'were' : 'was'
	return `${capital(calledRemoved(removed, names))} ${was} removed.`
}

/** The list of lines that stand somewhere. */
export const listOf = (of: LinesOf): string =>
	'extra' in of ? `extras.${of.extra}.lines` : `options.${of.option}.pots.${of.container}`

/** The list in which something was removed, and where in it: there it is offered to put it back. */
export function placeOf(removed: Removed): { readonly list: string; readonly at: number } {
	switch (removed.is) {
		case 'palette':
			return { list: 'options', at: removed.at }
		case 'colour':
			return { list: `options.${removed.of}.palette`, at: removed.at }
		case 'line':
			return { list: listOf(removed.of), at: removed.at }
		case 'extra':
			return { list: 'extras', at: removed.at }
		case 'container':
			return { list: `containers.${removed.container.id}`, at: 0 }
		case 'note': {
			const [first] = removed.notes
			return { list: `notes.${first?.note.option}.${first?.note.container}`, at: 0 }
		}
		case 'pots':
			return { list: `options.${removed.of}.pots`, at: 0 }
		default:
			return removed satisfies never
	}
}
