import { z } from 'zod'
import { onceField, text, tick } from '../../../forms/fields'
import type { Typed } from '../../../forms/read'
import { type Clause, clauseKeySchema, type Template } from '../../template/template'
import { versionField } from './terms-form'

const boxOf = /^clause\.(\d{1,2})\.(key|title|text|on|place)$/
const mostClauses = 60

function clauseParts(typed: Typed): unknown {
	const rest: Record<string, unknown> = {}
	const clauses: Record<string, string | readonly string[]>[] = []
	for (const [name, value] of Object.entries(typed)) {
		const [, number, box] = boxOf.exec(name) ?? []
		if (number === undefined || box === undefined || Number(number) > mostClauses) rest[name] = value
		else clauses[Number(number)] = { ...clauses[Number(number)], [box]: value }
	}
	return { ...rest, clause: Array.from(clauses, (each) => each ?? {}) }
}

const placeField = z
	.string()
	.trim()
	.regex(/^\d{1,2}$/, 'Give a place in the order: 1, 2, 3.')
	.transform(Number)

const clause = z.strictObject({
	/** Empty of a new one. */
	key: z.union([z.literal(''), clauseKeySchema]),
	title: text(80),
	text: text(4000, { lines: true }),
	on: tick,
	place: placeField,
})
type Row = z.output<typeof clause>

const isBlank = ({ key, title, text: words }: Row) => key === '' && title === '' && words === ''

/** A key out of the title: what changed is told by it, so it never changes again. */
function newKey(title: string, taken: ReadonlySet<string>): string {
	const plain = title
		.toLowerCase()
		.normalize('NFD')
		.replace(/[^a-z0-9]+/g, '-')
		.replace(/^[^a-z]+|-+$/g, '')
	const base = plain.slice(0, 24).replace(/-+$/, '') || 'clause'
	const free = [base, ...Array.from({ length: mostClauses + 1 }, (_, index) => `${base}-${index + 2}`)]
	return free.find((key) => !taken.has(key)) ?? base
}

/** One that was given the place of another goes before it; places are counted anew, with room between. */
function inOrder(rows: readonly Row[]): Clause[] {
	const keyed: (Row & { readonly was: number })[] = []
	for (const [was, row] of rows.entries()) {
		const taken = new Set([...rows, ...keyed].map(({ key }) => key))
		keyed.push({ ...row, was, key: row.key === '' ? newKey(row.title, taken) : row.key })
	}
	const moved = (row: (typeof keyed)[number]) => Math.sign(row.place - 1 - row.was)
	return keyed
		.toSorted((a, b) => a.place - b.place || moved(a) - moved(b) || a.was - b.was)
		.map(({ key, title, text: words, on }, index) => ({ key, title, text: words, isOn: on, order: 10 * (index + 1) }))
}

const texts = z.record(z.string(), z.union([z.string(), z.array(z.string())]))

/** The studio's clauses as they were typed; a new one left empty is none. */
export const templateForm = z
	.preprocess(
		(given) => {
			const boxes = texts.safeParse(given)
			return boxes.success ? clauseParts(boxes.data) : given
		},
		z.strictObject({
			once: onceField,
			version: versionField,
			clause: z
				.array(clause)
				.min(1)
				.max(mostClauses + 1),
		}),
	)
	.transform(({ once, version, clause: rows }) => ({
		once,
		version,
		clauses: inOrder(rows.filter((row) => !isBlank(row))),
	}))

/** The boxes of the page, the clauses in their order. */
export const templateText = ({ clauses }: Template): Typed =>
	Object.assign(
		{},
		...clauses
			.toSorted((a, b) => a.order - b.order)
			.map(({ key, title, text: words, isOn }, index) => ({
				[`clause.${index}.key`]: key,
				[`clause.${index}.title`]: title,
				[`clause.${index}.text`]: words,
				...(isOn && { [`clause.${index}.on`]: 'on' }),
				[`clause.${index}.place`]: String(index + 1),
			})),
	)
