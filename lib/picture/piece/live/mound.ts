import type { Dice } from '../../piece'
import { roll, times } from '../growth/roll'
import type { Point } from '../ink/point'

/** A place on a mound of leaves and the direction in which a thing grows there. */
export type Place = { readonly at: Point; readonly heading: number }

type Mound = { readonly acrossCm: number; readonly heightCm: number }

/** A row over a mound: `share` 1 is its outline, 0 its middle at the soil. */
export const overMound = ({ acrossCm, heightCm }: Mound, share: number, count: number, dice: Dice): Place[] =>
	times(count, (t) => {
		const heading = (2 * t - 1) * (1.5 - 0.6 / count) + roll(dice, -0.45, 0.45) / count
		const reach = share * roll(dice, 0.93, 1.03)
		const [across, up] = [Math.sin(heading) * reach, Math.cos(heading) * reach]
		return { at: [(acrossCm / 2) * across, -heightCm * (0.12 + 0.88 * up)], heading }
	})
