import { soilCm3 } from '../../../container/soil'
import { volume } from '../../../format/volume'
import { named } from '../../planned'
import { finding } from '../finding'
import type { Check } from '../setting'

/** Root balls need soil between them: beyond this part of it a caution (common practice, no published source). */
const crowded = 0.7

/** More root than soil. */
export const rootBalls: Check = (lines, { pot, lengths }) => {
	const live = lines.filter(({ material: { kind, rootBallLitres } }) => kind === 'live' && rootBallLitres !== null)
	const roots = live.reduce((sum, { material, count }) => sum + count * (material.rootBallLitres ?? 0), 0)
	const soil = soilCm3(pot) / 1000
	if (roots <= crowded * soil) return []
	const says = `The root balls of ${named(live)} take ${volume(roots, lengths)}, and the pot holds ${volume(soil, lengths)} of soil.`
	const mend = 'Take fewer plants or smaller root balls, or a deeper pot.'
	return [finding('root balls', roots > soil ? 'look again' : 'caution', says, mend)]
}
