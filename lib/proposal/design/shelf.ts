import type { MaterialId, ProposalId } from '../../units/id'
import type { Facts, Material } from '../facts'

/** Every material of the catalogue, and which proposals of a season name it. */
export type Shelf = {
	readonly materials: readonly Omit<Material, 'onlyHere'>[]
	readonly namedBy: ReadonlyMap<MaterialId, ReadonlySet<ProposalId>>
}

/** The shelf as one proposal sees it: whether anybody else takes a thing. */
export function materialsFor({ materials, namedBy }: Shelf, of: ProposalId): Facts['materials'] {
	return new Map(
		materials.map((each): [MaterialId, Material] => {
			const isElsewhere = [...(namedBy.get(each.id) ?? [])].some((id) => id !== of)
			return [each.id, { ...each, onlyHere: !isElsewhere }]
		}),
	)
}
