import { z } from 'zod'
import { problems } from '../../recipe/library/problems'
import type { RecipeLine } from '../../recipe/recipe'
import { quarters } from '../../season/season'
import { decimalField, emptyOr, idField, onceField, text } from '../fields'
import { type Known, lineIn, type Row, rowFields, rowShape } from './recipe-lines'

const most = 60
const many = <T extends z.ZodType>(field: T) => z.array(field).max(most, 'Sixty lines are the most.')

const fields = z.strictObject({
	once: onceField,
	recipe: emptyOr(idField<'recipe'>()),
	name: text(80, { min: 1 }),
	quarter: z.enum(quarters, 'Choose a season.'),
	note: text(500, { lines: true }),
	...{ at: many(rowShape.at), material: many(rowShape.material), role: many(rowShape.role) },
	...{ holding: many(rowShape.holding), way: many(rowShape.way) },
	...{ count: many(rowShape.count), holds: many(rowShape.holds) },
	/** Rows that are to go, by their number. */
	remove: many(z.string().regex(/^\d{1,2}$/, 'Open the recipe again.')),
})
type Fields = z.output<typeof fields>

const orderField = emptyOr(decimalField(0, 999))

/** Row by row what was typed; undefined where a row is not whole. */
function rowsOf({ at, material, role, holding, way, count, holds }: Fields): Row[] | undefined {
	const all = [at, material, role, holding, way, count, holds]
	if (all.some(({ length }) => length !== material.length)) return undefined
	return material.map((of, n) => ({
		...{ at: at[n] ?? '', material: of, role: role[n] ?? '', holding: holding[n] ?? '' },
		...{ way: way[n] ?? '', count: count[n] ?? '', holds: holds[n] ?? '' },
	}))
}

type Placed = { readonly row: number; readonly place: number; readonly line: RecipeLine }
type Say = (path: (string | number)[], message: string) => undefined

function placedIn(rows: readonly Row[], gone: ReadonlySet<string>, known: Known, say: Say): Placed[] {
	return rows.flatMap((each, row) => {
		if (gone.has(String(row)) || (each.material === '' && each.count.trim() === '')) return []
		const at = orderField.safeParse(each.at)
		if (!at.success) say(['at', row], at.error.issues[0]?.message ?? 'Give a number.')
		const line = lineIn(row, rows, known, (of, field, says) => say([field, of], says))
		return line === undefined || !at.success ? [] : [{ row, line, place: at.data ?? most + row }]
	})
}

/**
 * A recipe with its lines, in the order that their numbers say; rows without a material, and those that are to go, are
 * passed over. What is wrong is named by its field and row.
 */
export const recipeForm = (known: Known) =>
	fields.transform((typed, context) => {
		const say: Say = (path, message) => void context.addIssue({ code: 'custom', path, message })
		const { once, recipe, name, quarter, note, remove } = typed
		const rows = rowsOf(typed)
		if (rows === undefined) say(['material'], 'Open the recipe again: a line is not whole.')
		const before = context.issues.length
		const placed = placedIn(rows ?? [], new Set(remove), known, say).toSorted((a, b) => a.place - b.place)
		const lines = placed.map(({ line }) => line)
		if (context.issues.length === before)
			for (const { at, field, says } of problems(lines, known))
				say(at === null ? [rowFields[1], 0] : [field, placed[at]?.row ?? 0], says)
		return { once, recipe, name, quarter, note, lines }
	})
