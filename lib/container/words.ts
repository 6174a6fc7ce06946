import { isRound, type Shape, type Stand, type Vessel } from './card'

/** What a shape is, for one who has to choose it. */
export const shapeWords: Record<Shape, string> = {
	round: 'round pot, straight or tapered',
	square: 'square planter, as deep as wide',
	rectangular: 'rectangular planter, wider than deep',
	bowl: 'low bowl, rounded below',
	trough: 'trough that stands on the ground',
	'window box': 'window box under a sill',
	urn: 'urn on a stem and a foot',
	column: 'tall column with four sides',
}

export const standWords: Record<Stand, string> = {
	'all round': 'free, seen all round',
	'against a wall': 'against a wall',
	'in a corner': 'in a corner',
}

type Field = keyof Pick<Vessel, 'topCm' | 'topDepthCm' | 'bottomCm' | 'bottomDepthCm' | 'heightCm'>
export type Asked = { readonly field: Field; readonly label: string }

/** The outer measures that a shape asks for, each in words. */
export function asked(shape: Shape): Asked[] {
	const foot = shape === 'urn' ? 'Across the foot' : 'Across the bottom'
	const height: Asked = {
		field: 'heightCm',
		label: shape === 'urn' ? 'Height, foot and stem included' : 'Height',
	}
	if (isRound(shape)) {
		return [{ field: 'topCm', label: 'Across the rim' }, { field: 'bottomCm', label: foot }, height]
	}
	return [
		{ field: 'topCm', label: 'Along the front, at the rim' },
		{ field: 'topDepthCm', label: 'Front to back, at the rim' },
		{ field: 'bottomCm', label: 'Along the front, at the bottom' },
		{ field: 'bottomDepthCm', label: 'Front to back, at the bottom' },
		height,
	]
}
