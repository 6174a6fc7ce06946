import { viewedFaces } from '../../container/along'
import { innerOpeningCm2 } from '../../container/soil'
import { exactCount } from '../../recipe/grow/count'
import { openingRatio, type Pot } from '../../recipe/grow/reference'
import { plantsFor } from '../../recipe/grow/spacing'
import { canBeLent, type Holding, type Role } from '../../recipe/material'
import { isCluster } from '../../recipe/planned'
import type { Grows, RecipeLine } from '../../recipe/recipe'
import type { DesignMaterial } from '../../recipe/traits'
import { halfUp } from '../../units/round'
import type { DraftLine } from '../draft'

const thousandth = (value: number): number => halfUp(value, 1000)

function plants(value: number, pot: Pot, { spacingCm, acrossCm }: DesignMaterial): Grows {
	const apart = spacingCm ?? acrossCm
	if (apart === null || apart <= 0) return { way: 'fixed', count: value }
	const share = value / plantsFor(innerOpeningCm2(pot), 1, apart)
	return { way: 'spacing', share: Math.min(1, Math.max(0.01, thousandth(share))) }
}

/** Set singly where there is less than one a face, as a bow or a lantern is; else so many a face. */
function accents(value: number, pot: Pot, material: DesignMaterial): Grows {
	const faces = viewedFaces(pot, pot.stands)
	if (material.kind === 'light' || value < faces) return { way: 'fixed', count: value }
	const ofReference = isCluster(material) ? 1 : Math.sqrt(openingRatio(pot))
	return { way: 'faces', count: thousandth(value / faces / ofReference) }
}

const wayOf = { thriller: 'stems', filler: 'greens', spiller: 'rim' } as const

/** How a count that was typed for one pot grows to others: by its role, taken back to the reference (common practice). */
export function growsFrom(value: number, role: Role, pot: Pot, material: DesignMaterial): Grows {
	if (material.piece === 'plant') return plants(value, pot, material)
	if (role === 'mechanics') return { way: 'held', count: thousandth(value / openingRatio(pot)), holds: null }
	if (role === 'accent') return accents(value, pot, material)
	const way = wayOf[role]
	return { way, count: thousandth(value / exactCount({ way, count: 1 }, pot, material)) }
}

/** What belongs to one client does not go to another: they get it as the studio gives such a thing. */
const given = (holding: Holding, { kind }: DesignMaterial): Holding =>
	holding === 'own' ? (canBeLent(kind) ? 'lent' : 'sold') : holding

/** A line of one pot as a line of a recipe; nothing is left of its count but how it grows. Undefined of what is not known. */
export function asRecipe(
	{ material: id, role, holding, count }: DraftLine,
	pot: Pot,
	materials: ReadonlyMap<DesignMaterial['id'], DesignMaterial>,
	{ isSameClient }: { readonly isSameClient: boolean },
): RecipeLine | undefined {
	const material = materials.get(id)
	if (material === undefined || count.value === 0) return undefined
	const grows = count.way === 'grown' ? count.grows : growsFrom(count.value, role, pot, material)
	return { material: id, role, holding: isSameClient ? holding : given(holding, material), grows }
}
