import type { DraftText } from '../../../forms/draft-form'
import { withLines } from './lines-of'
import { replacePots } from './remove'
import type { Done, Extra, NotesAt, Option, Removed } from './removed'

type Keyed = { readonly key: string }

const inserted = <T>(items: readonly T[], at: number, item: T): T[] => items.toSpliced(at, 0, item)

/** Its own key, unless something that was added since has it. */
function keyFor({ key }: Keyed, others: readonly Keyed[]): string {
	const taken = new Set(others.map((each) => each.key))
	for (let n = 0; ; n += 1) {
		const free = n === 0 ? key : `b${n}`
		if (!taken.has(free)) return free
	}
}

/** Each where it was, in the order in which they stood. */
const withNotes = (notes: DraftText['overruled'], back: NotesAt): DraftText['overruled'] =>
	back.reduce((all, { at, note }) => inserted(all, at, note), [...notes])

function putPalette(draft: DraftText, { at, option, notes }: Extract<Removed, { is: 'palette' }>): DraftText {
	const key = keyFor(option, draft.options)
	const its = notes.map((each) => ({ ...each, note: { ...each.note, option: key } }))
	return {
		...draft,
		options: inserted<Option>(draft.options, at, { ...option, key }),
		overruled: withNotes(draft.overruled, its),
	}
}

function putExtra(draft: DraftText, { at, extra }: Extract<Removed, { is: 'extra' }>): DraftText {
	return { ...draft, extras: inserted<Extra>(draft.extras, at, { ...extra, key: keyFor(extra, draft.extras) }) }
}

/** What was replaced goes back in; what was put into other containers meanwhile stays. */
function putPots(draft: DraftText, { of, before, after }: Extract<Removed, { is: 'pots' }>): Done {
	const now = draft.options.find(({ key }) => key === of)?.pots ?? []
	const isBack = new Set(before.map(({ container }) => container))
	const since = now.filter((pot) => !isBack.has(pot.container) && !after.includes(pot))
	return replacePots(draft, of, [...before, ...since])
}

const has = (items: readonly Keyed[], key: string) => items.some((each) => each.key === key)

/**
 * Puts what was taken out last back to where it stood, whatever else was changed since; undefined where its place is
 * gone. What is put back in place of something else can be taken back in the same way.
 */
export function putBack(draft: DraftText, removed: Removed): Done | undefined {
	switch (removed.is) {
		case 'palette':
			return { draft: putPalette(draft, removed), removed: null }
		case 'extra':
			return { draft: putExtra(draft, removed), removed: null }
		case 'colour': {
			const { of, at, colour } = removed
			if (!has(draft.options, of)) return undefined
			const options = draft.options.map((each) =>
				each.key === of ? { ...each, palette: inserted(each.palette, at, colour) } : each,
			)
			return { draft: { ...draft, options }, removed: null }
		}
		case 'line': {
			const { of, at, line } = removed
			const isThere = 'extra' in of ? has(draft.extras, of.extra) : has(draft.options, of.option)
			if (!isThere) return undefined
			return { draft: withLines(draft, of, (lines) => inserted(lines, at, line)), removed: null }
		}
		case 'container': {
			const others = draft.containers.filter(({ id }) => id !== removed.container.id)
			return { draft: { ...draft, containers: inserted(others, removed.at, removed.container) }, removed: null }
		}
		case 'note':
			return { draft: { ...draft, overruled: withNotes(draft.overruled, removed.notes) }, removed: null }
		case 'pots':
			return has(draft.options, removed.of) ? putPots(draft, removed) : undefined
		default:
			return removed satisfies never
	}
}
