import type { Holding, Kind, Role } from '../material'
import type { Grows } from '../recipe'
import type { DesignMaterial } from '../traits'

export const usualHolding = (kind: Kind): Holding => (kind === 'ornament' || kind === 'light' ? 'lent' : 'sold')

const byRole: Readonly<Record<Role, Grows['way']>> = {
	thriller: 'stems',
	filler: 'greens',
	spiller: 'rim',
	accent: 'faces',
	mechanics: 'held',
}

/** How a material grows where nobody says otherwise: plants by their spacing, lights as written, the rest by its role. */
export function usualWay({ kind, piece }: Pick<DesignMaterial, 'kind' | 'piece'>, role: Role): Grows['way'] {
	if (piece === 'plant') return 'spacing'
	return kind === 'light' ? 'fixed' : byRole[role]
}
