import { isLong } from './along'
import type { Vessel } from './card'

/** How a container is planted: up a middle, along a front, or flat. */
export const plantings = ['pot', 'box', 'bowl'] as const
export type Planting = (typeof plantings)[number]

export function plantedAs(vessel: Vessel): Planting {
	if (vessel.shape === 'bowl') return 'bowl'
	return vessel.shape === 'window box' || vessel.shape === 'trough' || isLong(vessel) ? 'box' : 'pot'
}
