import fc from 'fast-check'
import { isRound, shapes, type Vessel } from '@/lib/container/card'

/** A thin round pot, as wide at the floor as at the rim, full to it: what a closed form describes. */
export function vessel(more: Partial<Vessel> = {}): Vessel {
	const plain = { topDepthCm: null, bottomDepthCm: null, wallCm: 0, headspaceCm: 0, soilDepthCm: null }
	return { shape: 'round', topCm: 40, bottomCm: 40, heightCm: 50, ...plain, ...more }
}

const tenth = (min: number, max: number) => fc.integer({ min: min * 10, max: max * 10 }).map((n) => n / 10)

/** Vessels such as stand at doors, from a bowl on a step to a trough along a shop front. */
export const vessels: fc.Arbitrary<Vessel> = fc
	.record({
		shape: fc.constantFrom(...shapes),
		topCm: tenth(20, 200),
		topDepthCm: tenth(15, 80),
		bottomCm: tenth(12, 200),
		bottomDepthCm: tenth(12, 80),
		heightCm: tenth(15, 120),
		wallCm: tenth(0, 4),
		headspaceCm: tenth(0, 10),
		soilDepthCm: fc.option(tenth(1, 90)),
	})
	.map((drawn) => ({ ...drawn, ...(isRound(drawn.shape) && { topDepthCm: null, bottomDepthCm: null }) }))
