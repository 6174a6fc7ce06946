import { exactCount, rounded } from './count'
import { greens } from './greens'
import { withHeld } from './held'
import type { Pot } from './reference'
import type { Materials, Numbered, ToGrow } from './to-grow'

export type Grown = ToGrow & { readonly count: number }

/** The count of a line that hangs on no other; null of one that does. */
function own({ line: { grows, kept, material } }: Numbered, pot: Pot, materials: Materials): number | null {
	if (kept !== undefined) return kept
	if (grows.way === 'held') return null
	const found = materials.get(material)
	return rounded(exactCount(grows, pot, found), found)
}

/**
 * A recipe grown from the reference container to a pot; each line with its count in the material's unit, whole or,
 * of kg and litres, to three decimals. What was written as nothing stays nothing, anything else is at least 1.
 */
export function grow(lines: readonly ToGrow[], pot: Pot, materials: Materials): Grown[] {
	const numbered = lines.map((line, at) => ({ line, at }))
	const owned = numbered.flatMap((each) => {
		const count = own(each, pot, materials)
		return count === null ? [] : [[each.at, count] as const]
	})
	const counts = withHeld(numbered, new Map([...owned, ...greens(numbered, pot, materials)]), pot, materials)
	return numbered.map(({ line, at }) => ({ ...line, count: counts.get(at) ?? 0 }))
}
