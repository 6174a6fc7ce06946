import { canBeLent } from '@/lib/recipe/material'
import type { JobLine } from '../job'
import type { Rates } from '../rates'

/**
 * Seasons over which the cost of a line is spread: 1 for what is sold.
 * @throws when what cannot come back is lent
 */
export function usesOfLife({ name, kind, holding }: JobLine, rates: Rates): number {
	if (holding !== 'lent') return 1
	if (!canBeLent(kind)) throw new Error(`usesOfLife: ${name} (${kind}) cannot be lent`)
	return rates.usesOfLife[kind]
}
