import type { DraftText } from '../../forms/draft-form'
import { usualHolding } from '../../recipe/library/usual'
import { canBeLent, type Holding } from '../../recipe/material'
import type { StandIn } from './stand-in'

type Line = DraftText['extras'][number]['lines'][number]
type Grows = NonNullable<Line['grows']>

/** What is lent stays lent where it can be; a client's own is only what it was. */
const holdingOf = ({ kind }: StandIn, before: Holding): Holding => {
	if (before === 'own') return usualHolding(kind)
	return before === 'lent' && !canBeLent(kind) ? 'sold' : before
}

const toThousandth = (value: number) => Math.max(0.001, Math.round(value * 1000) / 1000)

/** So many of the other's units; what cannot be read as a number stays as it was typed. */
function counted(text: string, { perUnit, unit }: StandIn): string {
	const value = Number(text)
	if (perUnit === 1 || text.trim() === '' || !(value > 0)) return text
	const exact = value * perUnit
	return String(unit === 'kg' || unit === 'litre' ? toThousandth(exact) : Math.max(1, Math.round(exact)))
}

function regrowing(grows: Grows, from: string, to: StandIn, isSwapped: boolean): Grows {
	if (grows.way === 'spacing') return grows
	const scaled = isSwapped && to.perUnit !== 1 ? { ...grows, count: toThousandth(grows.count * to.perUnit) } : grows
	return scaled.way === 'held' && scaled.holds === from ? { ...scaled, holds: to.id } : scaled
}

/**
 * Lines of one container in which a material has been replaced, every line of it, and what held the one holds the
 * other. Counts stay as they are; where the two are counted differently, as many pieces stand.
 */
export function swapped(lines: readonly Line[], from: string, to: StandIn): Line[] {
	return lines.map((line) => {
		const isSwapped = line.material === from
		const grows = line.grows && regrowing(line.grows, from, to, isSwapped)
		if (!isSwapped) return grows === line.grows ? line : { ...line, grows }
		const { id: material, role } = to
		return { ...line, material, role, holding: holdingOf(to, line.holding), count: counted(line.count, to), grows }
	})
}
