import type { Vessel } from '../../container/card'
import { reachCm, standingCm, tallestCm } from '../../recipe/height'
import type { SceneLine } from '../scene'
import { isPlant } from './habit'

/** Even a seedling shows, in cm. */
const leastCm = 3

export type Pot = Vessel & { readonly sillToGlassCm: number | null }

const asMaterial = ({ form, lengthCm }: SceneLine) =>
	({ kind: isPlant(form) ? 'live' : 'fresh', lengthCm: lengthCm !== null && lengthCm > 0 ? lengthCm : null }) as const

/** Height of a thriller's tip above the rim, in cm, as the recipe reckons it; what nobody has measured stands as high as looks best. */
export const aboveRimCm = (line: SceneLine, pot: Pot): number =>
	Math.max(leastCm, standingCm(asMaterial(line), pot) ?? tallestCm(pot))

/** The most that a line can show above the soil, in cm; null where nobody has measured it. */
export function aboveSoilCm(line: SceneLine, pot: Pot): number | null {
	const reach = reachCm(asMaterial(line), pot)
	return reach === null ? null : reach + pot.headspaceCm
}
