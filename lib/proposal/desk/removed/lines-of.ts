import type { DraftText } from '../../../forms/draft-form'
import type { Line, LinesOf, Option } from './removed'

type Change = (lines: readonly Line[]) => Line[]

/** The lines of one container changed, in their place among the others. */
export function inPot(option: Option, container: string, change: Change): Option {
	const at = option.pots.findIndex((pot) => pot.container === container)
	const lines = change(option.pots[at]?.lines ?? [])
	const pots = at < 0 ? [...option.pots, { container, lines }] : option.pots.with(at, { container, lines })
	return { ...option, pots }
}

/** The lines that stand somewhere; none where there is no such place. */
export function linesAt({ options, extras }: DraftText, of: LinesOf): readonly Line[] {
	if ('extra' in of) return extras.find(({ key }) => key === of.extra)?.lines ?? []
	const option = options.find(({ key }) => key === of.option)
	return option?.pots.find(({ container }) => container === of.container)?.lines ?? []
}

export function withLines(draft: DraftText, of: LinesOf, change: Change): DraftText {
	if ('extra' in of) {
		const extras = draft.extras.map((each) => (each.key === of.extra ? { ...each, lines: change(each.lines) } : each))
		return { ...draft, extras }
	}
	const options = draft.options.map((each) => (each.key === of.option ? inPot(each, of.container, change) : each))
	return { ...draft, options }
}
