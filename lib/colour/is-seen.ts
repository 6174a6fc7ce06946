import type { DesignMaterial } from '../recipe/traits'
import { familyOf } from './name-of'

/** Whether its colour is part of the picture by day: what only holds and what only shines is not. */
export const isSeen = ({ kind, form }: Pick<DesignMaterial, 'kind' | 'form'>): boolean =>
	kind !== 'mechanics' && kind !== 'light' && form !== 'unseen' && form !== 'lights'

/** Whether it is of the greens that an accent must show against: a cut green, or a filler or spiller that looks green. */
export function isGreen({ piece, role, hex }: Pick<DesignMaterial, 'piece' | 'role' | 'hex'>): boolean {
	if (piece === 'green') return true
	const family = familyOf(hex)
	return (role === 'filler' || role === 'spiller') && (family === 'green' || family === 'teal')
}
