import { rounded } from './count'
import { openingRatio, type Pot } from './reference'
import type { Counts, Materials, Numbered, ToGrow } from './to-grow'

const holdsOf = ({ grows }: ToGrow) => (grows.way === 'held' ? grows.holds : null)

function heldCount({ grows, material }: ToGrow, lines: readonly Numbered[], counts: Counts, pot: Pot, all: Materials) {
	if (grows.way !== 'held') return 0
	const { count, holds } = grows
	if (holds === null) return rounded(count * openingRatio(pot), all.get(material))
	const kin = lines.filter(({ line }) => line.material === holds)
	const amount = kin.reduce((sum, { at }) => sum + (counts.get(at) ?? 0), 0)
	return rounded(count * amount, all.get(material))
}

/**
 * Counts with those of the lines that follow what they hold: stakes follow stems, and their ties follow stakes. Where
 * such lines hold each other in a circle, nothing is held.
 */
export function withHeld(lines: readonly Numbered[], counts: Counts, pot: Pot, materials: Materials): Counts {
	const open = lines.filter(({ at }) => !counts.has(at))
	const next = open.filter(({ line }) => !open.some((other) => other.line.material === holdsOf(line)))
	if (next.length === 0) return counts
	const grown = next.map(({ line, at }) => [at, heldCount(line, lines, counts, pot, materials)] as const)
	return withHeld(lines, new Map([...counts, ...grown]), pot, materials)
}
