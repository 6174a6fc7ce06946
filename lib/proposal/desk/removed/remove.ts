import type { DraftText } from '../../../forms/draft-form'
import { linesAt, withLines } from './lines-of'
import type { Done, NotesAt, Pots, Target } from './removed'

type Notes = DraftText['overruled']
type Is = (note: Notes[number]) => boolean

const notesAt = (notes: Notes, is: Is): NotesAt => notes.flatMap((note, at) => (is(note) ? [{ at, note }] : []))

/** A palette's notes go with it: another may come to bear its key. */
function removePalette(draft: DraftText, key: string): Done | undefined {
	const at = draft.options.findIndex((each) => each.key === key)
	const option = draft.options[at]
	if (option === undefined) return undefined
	const isIts: Is = (note) => note.option === key
	const overruled = draft.overruled.filter((note) => !isIts(note))
	const removed = { is: 'palette', at, option, notes: notesAt(draft.overruled, isIts) } as const
	return { draft: { ...draft, options: draft.options.toSpliced(at, 1), overruled }, removed }
}

function removeColour(draft: DraftText, of: string, at: number): Done | undefined {
	const colour = draft.options.find(({ key }) => key === of)?.palette[at]
	if (colour === undefined) return undefined
	const options = draft.options.map((each) =>
		each.key === of ? { ...each, palette: each.palette.toSpliced(at, 1) } : each,
	)
	return { draft: { ...draft, options }, removed: { is: 'colour', of, at, colour } }
}

function removeNote(draft: DraftText, of: Extract<Target, { is: 'note' }>): Done | undefined {
	const isIt: Is = ({ option, container, check }) =>
		option === of.option && container === of.container && check === of.check
	const notes = notesAt(draft.overruled, isIt)
	if (notes.length === 0) return undefined
	return {
		draft: { ...draft, overruled: draft.overruled.filter((note) => !isIt(note)) },
		removed: { is: 'note', notes },
	}
}

/** Takes something out of a draft and keeps it, so that it can be put back; undefined where it is not there. */
export function remove(draft: DraftText, target: Target): Done | undefined {
	switch (target.is) {
		case 'palette':
			return removePalette(draft, target.option)
		case 'colour':
			return removeColour(draft, target.option, target.at)
		case 'line': {
			const { of, at } = target
			const line = linesAt(draft, of)[at]
			if (line === undefined) return undefined
			return { draft: withLines(draft, of, (lines) => lines.toSpliced(at, 1)), removed: { is: 'line', of, at, line } }
		}
		case 'extra': {
			const at = draft.extras.findIndex(({ key }) => key === target.extra)
			const extra = draft.extras[at]
			return (
				extra && { draft: { ...draft, extras: draft.extras.toSpliced(at, 1) }, removed: { is: 'extra', at, extra } }
			)
		}
		case 'container': {
			const at = draft.containers.findIndex(({ id }) => id === target.container)
			const container = draft.containers[at]
			if (container === undefined) return undefined
			const containers = draft.containers.toSpliced(at, 1)
			return { draft: { ...draft, containers }, removed: { is: 'container', at, container } }
		}
		case 'note':
			return removeNote(draft, target)
		default:
			return target satisfies never
	}
}

/** A palette with other things in its containers; what was there is kept where anything was. */
export function replacePots(draft: DraftText, of: string, after: Pots): Done {
	const before = draft.options.find(({ key }) => key === of)?.pots ?? []
	const options = draft.options.map((each) => (each.key === of ? { ...each, pots: after } : each))
	const isLost = before.some(({ lines }) => lines.length > 0)
	return { draft: { ...draft, options }, removed: isLost ? { is: 'pots', of, before, after } : null }
}
