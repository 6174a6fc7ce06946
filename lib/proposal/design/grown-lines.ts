import type { Stance, Vessel } from '../../container/card'
import { grow } from '../../recipe/grow/grow'
import type { Materials, ToGrow } from '../../recipe/grow/to-grow'
import type { RecipeLine } from '../../recipe/recipe'
import type { DraftLine } from '../draft'

type Pot = Vessel & Pick<Stance, 'stands'>

const toGrow = ({ material, role, holding, count }: DraftLine): ToGrow[] =>
	count.way === 'typed'
		? []
		: [{ material, role, holding, grows: count.grows, ...(count.isKept && { kept: count.value }) }]

/** The lines of a draft grown anew to a pot: what is kept or typed stays as it is. */
export function regrown(lines: readonly DraftLine[], pot: Pot, materials: Materials): DraftLine[] {
	const counts = grow(lines.flatMap(toGrow), pot, materials).map(({ count }) => count)
	let next = 0
	return lines.map((line) => {
		if (line.count.way === 'typed') return line
		const value = counts[next] ?? line.count.value
		next += 1
		return { ...line, count: { ...line.count, value } }
	})
}

/** A recipe put into a pot, grown to it; what the designer had typed by hand or kept stays where the recipe has no line of it. */
export function grownLines(
	recipe: readonly RecipeLine[],
	before: readonly DraftLine[],
	pot: Pot,
	materials: Materials,
): DraftLine[] {
	const isHeld = ({ count }: DraftLine) => count.way === 'typed' || count.isKept
	const held = before.filter(isHeld)
	const fresh = recipe
		.filter(({ material, role }) => !held.some((line) => line.material === material && line.role === role))
		.map(({ grows, ...rest }): DraftLine => ({ ...rest, count: { way: 'grown', value: 0, grows, isKept: false } }))
	return regrown([...fresh, ...held], pot, materials)
}
