import { type Substitute, substitutes } from '../../recipe/library/substitutes'
import type { ContainerId, MaterialId } from '../../units/id'
import type { StandIn } from '../desk/stand-in'
import type { Draft } from '../draft'
import type { Facts, Material } from '../facts'
import { wantedIn } from './wanted'

const most = 12

const perUnit = (old: Material, next: Substitute['material']): number =>
	old.unit === next.unit ? 1 : old.piecesPerUnit / next.piecesPerUnit

const standIn = (old: Material, { material, reasons }: Substitute): StandIn => {
	const { id, name, hex, role, kind, unit } = material
	const counted = old.unit === unit ? [] : [`counted by the ${unit}`]
	return { id, name, hex, role, kind, unit, why: [...reasons, ...counted].join(', '), perUnit: perUnit(old, material) }
}

type For = { readonly material: MaterialId; readonly container: ContainerId | null }

/**
 * What can stand in for a material of a draft, the best dozen: in the light of the container, and in winter its
 * place's zone; with no container named, of the draft's first. Undefined where the material is not known.
 */
export function standIns(draft: Draft, facts: Facts, { material, container }: For): StandIn[] | undefined {
	const old = facts.materials.get(material)
	if (old === undefined) return undefined
	const known = [...facts.materials.values()].filter(({ isRetired }) => !isRetired)
	return substitutes(old, known, wantedIn(draft, facts, container))
		.slice(0, most)
		.map((each) => standIn(old, each))
}
