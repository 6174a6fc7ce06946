import { list } from '../../format/words'
import type { Problem } from '../../proposal/problem'
import { isClean } from '../../units/text'
import { blankShape, blanks, blanksIn } from './blanks'
import type { Clause, Template } from './template'

const most = { title: 80, text: 4000 }

const when = (is: boolean, at: string, says: string): Problem[] => (is ? [{ at, says }] : [])
const called = ({ title, key }: Clause) => `“${title.trim() || key}”`
const isTwice = (of: readonly (string | number)[], one: string | number) => of.filter((each) => each === one).length > 1

function blankFaults(clause: Clause): Problem[] {
	const { key, text } = clause
	const { unknown } = blanksIn(text)
	const names = list(unknown.map((name) => `{${name}}`))
	return [
		...when(
			unknown.length > 0,
			`clauses.${key}.text`,
			`${called(clause)}: ${names} ${unknown.length === 1 ? 'is no blank' : 'are no blanks'} that can be filled. There are ${list(blanks.map((name) => `{${name}}`))}.`,
		),
		...when(
			/[{}]/.test(text.replace(blankShape, '')),
			`clauses.${key}.text`,
			`${called(clause)}: a brace is open or closed alone. A blank is written {client}.`,
		),
	]
}

function wordFaults(clause: Clause): Problem[] {
	const { key, title, text } = clause
	const [atTitle, atText] = [`clauses.${key}.title`, `clauses.${key}.text`]
	const unclean = 'holds characters that cannot be stored. Type it again in plain text.'
	return [
		...when(title.trim() === '', atTitle, 'Give the clause a title.'),
		...when(/[\n{}]/.test(title), atTitle, `${called(clause)}: keep the title on one line, without blanks.`),
		...when(title.length > most.title, atTitle, `Keep a title to ${most.title} characters.`),
		...when(!isClean(title), atTitle, `The title of a clause ${unclean}`),
		...when(text.trim() === '', atText, `${called(clause)} says nothing yet: write it, or turn it off.`),
		...when(text.length > most.text, atText, `${called(clause)}: keep a clause to ${most.text} characters.`),
		...when(!isClean(text), atText, `${called(clause)} ${unclean}`),
	]
}

/** What has to be mended before an agreement is made from it. A clause that is off is kept as it is, whatever it says. */
export function faults({ clauses }: Pick<Template, 'clauses'>): Problem[] {
	const keys = clauses.map(({ key }) => key)
	const on = clauses.filter(({ isOn }) => isOn)
	const orders = on.map(({ order }) => order)
	return [
		...when(on.length === 0, 'clauses', 'Turn at least one clause on.'),
		...[...new Set(keys)].flatMap((key) =>
			when(isTwice(keys, key), `clauses.${key}`, `Two clauses have the key “${key}”.`),
		),
		...on.flatMap((clause) => [
			...wordFaults(clause),
			...blankFaults(clause),
			...when(
				isTwice(orders, clause.order),
				`clauses.${clause.key}.order`,
				`${called(clause)} has the place of another clause.`,
			),
		]),
	]
}
