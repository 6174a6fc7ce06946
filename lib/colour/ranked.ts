import type { Hex } from '../units/hex'
import type { MaterialId } from '../units/id'
import { labDifference, labOf } from './difference'

type Coloured = { readonly id: MaterialId; readonly hex: Hex; readonly inStock: number }
export type Ranked<Material> = { readonly material: Material; readonly difference: number }

/** ΔE00 within which two materials are as near as each other: at arm's length on a step nobody tells them apart (common practice, no published source). */
export const nearStep = 3

const order = (a: Ranked<Coloured>, b: Ranked<Coloured>): number =>
	Math.floor(a.difference / nearStep) - Math.floor(b.difference / nearStep) ||
	Number(b.material.inStock > 0) - Number(a.material.inStock > 0) ||
	a.difference - b.difference ||
	(a.material.id < b.material.id ? -1 : 1)

export const inOrder = <Material extends Coloured>(found: readonly Ranked<Material>[]): Ranked<Material>[] =>
	found.toSorted(order)

/**
 * Materials by how near they come to a colour (CIEDE2000, Lab of D65), nearest first. They are compared in steps of
 * `nearStep`: within a step those in storage come first, then the nearer. The order in which they came does not matter.
 */
export function ranked<Material extends Coloured>(materials: readonly Material[], hex: Hex): Ranked<Material>[] {
	const lab = labOf(hex)
	return inOrder(materials.map((material) => ({ material, difference: labDifference(labOf(material.hex), lab) })))
}
