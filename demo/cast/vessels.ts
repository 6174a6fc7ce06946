import type { ContainerFields } from '@/db/clients/places/rows'
import { type Shape, usualHeadspaceCm, usualWallCm, type WallMaterial } from '@/lib/container/card'
import { cmPerInch } from '@/lib/format/length'
import { hex } from '@/lib/units/hex'

/** Which column of a recipe's counts a container takes. */
export const sizes = ['small', 'medium', 'large', 'box', 'trough'] as const
export type Size = (typeof sizes)[number]

export type Vessel = { readonly size: Size; readonly card: ContainerFields }
type More = Partial<Omit<ContainerFields, 'name' | 'shape' | 'topCm' | 'bottomCm' | 'heightCm' | 'wall' | 'wallCm'>>

const cm = (inches: number) => Math.round(inches * cmPerInch * 100) / 100

type Measures = { readonly top: number; readonly bottom: number; readonly high: number; readonly depth?: number }

function vessel(size: Size, shape: Shape, name: string, measures: Measures, wall: WallMaterial, colour: string) {
	const { top, bottom, high, depth } = measures
	const deep = depth === undefined ? null : cm(depth)
	const card: ContainerFields = {
		name,
		shape,
		topCm: cm(top),
		topDepthCm: deep,
		bottomCm: cm(bottom),
		bottomDepthCm: deep === null ? null : cm((bottom * (depth ?? bottom)) / top),
		heightCm: cm(high),
		wall,
		wallCm: usualWallCm[wall],
		headspaceCm: usualHeadspaceCm,
		soilDepthCm: null,
		hasLiner: false,
		hasDrainHole: true,
		vesselKg: null,
		colour: hex(colour),
		owner: 'client',
		light: 'part',
		isWindy: false,
		isUnderEave: false,
		hasRoadSalt: false,
		sillToGlassCm: null,
		outletNear: true,
		hoseNear: false,
		waterer: 'client',
		stands: 'all round',
		limitedWeight: 'none',
		walkLeftCm: null,
	}
	return (more: More): Vessel => ({ size, card: { ...card, ...more } })
}

/** Measures in inches, as they are taken at the kerb; the card keeps cm. */
export const smallRound = (name: string, colour: string, more: More = {}): Vessel =>
	vessel('small', 'round', name, { top: 14, bottom: 10, high: 13 }, 'terracotta', colour)(more)
export const round = (name: string, colour: string, more: More = {}): Vessel =>
	vessel('medium', 'round', name, { top: 18, bottom: 13, high: 20 }, 'resin', colour)(more)
export const urn = (name: string, colour: string, more: More = {}): Vessel =>
	vessel('medium', 'urn', name, { top: 20, bottom: 11, high: 18 }, 'metal', colour)(more)
export const square = (name: string, colour: string, more: More = {}): Vessel =>
	vessel('large', 'square', name, { top: 24, bottom: 20, high: 24, depth: 24 }, 'resin', colour)(more)
export const trough = (name: string, colour: string, more: More = {}): Vessel =>
	vessel('trough', 'trough', name, { top: 40, bottom: 38, high: 18, depth: 14 }, 'metal', colour)(more)
export const windowBox = (name: string, colour: string, more: More = {}): Vessel =>
	vessel(
		'box',
		'window box',
		name,
		{ top: 36, bottom: 35, high: 9, depth: 9 },
		'wood',
		colour,
	)({
		stands: 'against a wall',
		limitedWeight: 'bracket',
		sillToGlassCm: 35,
		hasLiner: true,
		...more,
	})
