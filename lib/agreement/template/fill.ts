import { type Blank, blankShape, blanksIn } from './blanks'
import { inUse, type Template } from './template'

/** What each blank says; null while it is not known. */
export type Filling = Readonly<Record<Blank, string | null>>
export type FilledClause = { readonly key: string; readonly title: string; readonly text: string }
export type OpenBlank = { readonly clause: string; readonly title: string; readonly blank: Blank }

const valueIn = (filling: Filling, name: string): string | null =>
	blanksIn(`{${name}}`).known.map((blank) => filling[blank])[0] ?? null

/** Words that are filled in are not looked through for blanks; one that is open stays in its braces. */
const filled = (text: string, filling: Filling) =>
	text.replace(blankShape, (whole, name: string) => valueIn(filling, name) ?? whole)

/** The clauses in use with their blanks filled, and the blanks that nothing fills yet, clause by clause. */
export function fill(template: Template, filling: Filling, without: readonly string[] = []) {
	const clauses = inUse(template).filter(({ key }) => !without.includes(key))
	return {
		clauses: clauses.map(({ key, title, text }): FilledClause => ({ key, title, text: filled(text, filling) })),
		open: clauses.flatMap(({ key, title, text }) =>
			blanksIn(text)
				.known.filter((blank) => filling[blank] === null)
				.map((blank): OpenBlank => ({ clause: key, title, blank })),
		),
	}
}
