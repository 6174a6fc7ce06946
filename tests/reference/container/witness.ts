import type { Vessel } from '@/lib/container/card'

/** Whether a point lies in the soil of a vessel, by plane geometry of its section there: measures in cm from its axis and floor. */
export type Inside = (x: number, y: number, z: number) => boolean

/** Numbers from 0 to 1, the same each time: a multiplicative generator (Park and Miller, CACM 31(10), 1988). */
export function seeded(seed: number): () => number {
	let state = seed
	return () => {
		state = (state * 48_271) % 2_147_483_647
		return state / 2_147_483_647
	}
}

/** The vessel's hollow, told anew: half-widths by similar triangles, a bowl as the sphere through rim and lowest point. */
export function hollowOf(vessel: Vessel): { readonly inside: Inside; readonly half: number; readonly deep: number } {
	const { shape, topCm, bottomCm, wallCm } = vessel
	const [topDepth, bottomDepth] = [vessel.topDepthCm ?? topCm, vessel.bottomDepthCm ?? bottomCm]
	const high = (shape === 'urn' ? vessel.heightCm * 0.6 : vessel.heightCm) - wallCm
	const deep = high - vessel.headspaceCm
	const from = vessel.soilDepthCm === null ? 0 : Math.max(0, deep - vessel.soilDepthCm)
	const halfAt = (bottom: number, top: number, z: number) => bottom / 2 - wallCm + ((top - bottom) / 2) * (z / high)
	const rim = topCm / 2 - wallCm
	const centre = (rim ** 2 + high ** 2) / (2 * high)
	const inside: Inside = (x, y, z) => {
		if (z < from || z > deep) return false
		if (shape === 'bowl') return x ** 2 + y ** 2 + (z - centre) ** 2 <= centre ** 2
		const [a, b] = [halfAt(bottomCm, topCm, z), halfAt(bottomDepth, topDepth, z)]
		if (shape === 'round' || shape === 'urn') return Math.hypot(x, y) <= a
		return Math.abs(x) <= a && Math.abs(y) <= b
	}
	return { inside, half: Math.max(topCm, bottomCm, topDepth, bottomDepth) / 2, deep }
}

export type Thrown = { readonly cm3: number; readonly error: number }

/** Points thrown at random into the cube about a vessel: the part that hits, and the standard error of it, in cm³. */
export function thrown(vessel: Vessel, points: number, seed: number): Thrown {
	const { inside, half, deep } = hollowOf(vessel)
	const random = seeded(seed)
	const side = () => (random() * 2 - 1) * half
	let hits = 0
	for (let n = 0; n < points; n += 1) if (inside(side(), side(), random() * deep)) hits += 1
	const part = hits / points
	const cube = (2 * half) ** 2 * deep
	return { cm3: part * cube, error: Math.sqrt((part * (1 - part)) / points) * cube }
}
