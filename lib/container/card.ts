/** Shapes, with the measures that each asks for. */
export const shapes = ['round', 'square', 'rectangular', 'bowl', 'trough', 'window box', 'urn', 'column'] as const
export type Shape = (typeof shapes)[number]

export const walls = ['metal', 'resin', 'wood', 'terracotta', 'cast stone'] as const
export type WallMaterial = (typeof walls)[number]

/** Usual thickness of a vessel's wall in cm (common practice, no published source). */
export const usualWallCm: Record<WallMaterial, number> = {
	metal: 0.3,
	resin: 1,
	wood: 2,
	terracotta: 2.5,
	'cast stone': 4,
}

/** Usual free height between soil and rim in cm (common practice, no published source). */
export const usualHeadspaceCm = 5

export const lights = ['sun', 'part', 'shade'] as const
export const stands = ['all round', 'against a wall', 'in a corner'] as const
export const limits = ['none', 'deck', 'balcony', 'roof', 'bracket', 'railing'] as const
export const waterers = ['client', 'studio', 'nobody'] as const
export type Light = (typeof lights)[number]
export type Stand = (typeof stands)[number]
export type Limit = (typeof limits)[number]

/**
 * Outer measures in cm. `topCm` is across, or along the front of a box; `topDepthCm` front to back, null for what is
 * round. `soilDepthCm` is the true depth above a false bottom, null when the soil reaches the floor. An urn is measured
 * whole: its height from the ground to the rim, its bottom across the foot.
 */
export type Vessel = {
	readonly shape: Shape
	readonly topCm: number
	readonly topDepthCm: number | null
	readonly bottomCm: number
	readonly bottomDepthCm: number | null
	readonly heightCm: number
	readonly wallCm: number
	readonly headspaceCm: number
	readonly soilDepthCm: number | null
}

const roundShapes: ReadonlySet<Shape> = new Set(['round', 'bowl', 'urn'])

export const isRound = (shape: Shape): boolean => roundShapes.has(shape)

/** Where a container stands, and what that does to it. `sillToGlassCm` bounds what grows in a box under a window. */
export type Stance = {
	readonly stands: Stand
	readonly light: Light
	readonly isWindy: boolean
	readonly isUnderEave: boolean
	readonly hasRoadSalt: boolean
	readonly sillToGlassCm: number | null
	readonly limitedWeight: Limit
	/** Weight of the empty vessel; null where nobody has weighed it. */
	readonly vesselKg: number | null
}
