import type { Light } from '../../container/card'
import { type Substitute, substitutes } from '../../recipe/library/substitutes'
import type { ContainerId, MaterialId } from '../../units/id'
import type { StandIn } from '../desk/stand-in'
import type { Draft } from '../draft'
import type { Facts, Material } from '../facts'
import { cardsOf } from '../job-of'
import { monthOf } from './ask'

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
	const cards = cardsOf(draft, facts)
	const card = cards.find(({ id }) => id === container) ?? cards[0]
	const place = facts.sites.find(({ id }) => id === card?.place)
	const light: Light = card?.light ?? 'part'
	const zone = facts.season.quarter === 'winter' ? (place?.zone ?? null) : null
	const known = [...facts.materials.values()].filter(({ isRetired }) => !isRetired)
	const wanted = { month: monthOf(draft, facts), zone, light, lengths: facts.studio.lengths }
	return substitutes(old, known, wanted)
		.slice(0, most)
		.map((each) => standIn(old, each))
}
