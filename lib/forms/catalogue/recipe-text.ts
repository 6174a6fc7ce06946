import type { RecipeLine } from '../../recipe/recipe'
import type { Quarter } from '../../season/season'
import type { Typed } from '../read'
import { type Row, rowFields } from './recipe-lines'

type Written = {
	readonly name: string
	readonly quarter: Quarter
	readonly note: string
	readonly lines: readonly RecipeLine[]
}
export type RowText = { readonly [Name in keyof Row]: string }

const spareRows = 4
const firstRows = 8

const empty: RowText = { at: '', material: '', role: '', holding: '', way: '', count: '', holds: '' }

function rowText({ material, role, holding, grows }: RecipeLine, at: number, lines: readonly RecipeLine[]): RowText {
	const count = grows.way === 'spacing' ? Math.round(grows.share * 1000) / 10 : grows.count
	const held = grows.way === 'held' ? lines.findIndex((line) => line.material === grows.holds) : -1
	const holds = held === -1 ? '' : String(held + 1)
	return { at: String(at + 1), material, role, holding, way: grows.way, count: String(count), holds }
}

/** A recipe as its card shows it, with rows to spare; `recipeForm` reads it back. */
export function recipeText(recipe: Written | undefined): Typed {
	const { name, quarter, note, lines } = recipe ?? { name: '', quarter: 'winter', note: '', lines: [] }
	const spare = Array.from({ length: recipe === undefined ? firstRows : spareRows }, () => empty)
	const rows = [...lines.map(rowText), ...spare]
	return {
		name,
		quarter,
		note,
		...Object.fromEntries(rowFields.map((field) => [field, rows.map((row) => row[field])])),
	}
}

/** The rows of the card, as saved or as typed. */
export function rowsIn(typed: Typed): RowText[] {
	const of = (field: keyof Row) => [typed[field] ?? []].flat()
	return of('material').map((material, n) => ({
		...{ at: of('at')[n] ?? '', material, role: of('role')[n] ?? '', holding: of('holding')[n] ?? '' },
		...{ way: of('way')[n] ?? '', count: of('count')[n] ?? '', holds: of('holds')[n] ?? '' },
	}))
}
