import { list } from '../format/words'
import type { MaterialId } from '../units/id'
import type { Role } from './material'
import type { DesignMaterial } from './traits'

/** A line as it stands in one pot: so many units of one material. */
export type Planned = { readonly material: DesignMaterial; readonly role: Role; readonly count: number }

type Line = { readonly material: MaterialId; readonly role: Role; readonly count: number }

/** Lines with their materials; what names none that is known, or comes to nothing, is passed over. */
export function planned(lines: readonly Line[], materials: ReadonlyMap<MaterialId, DesignMaterial>): Planned[] {
	return lines.flatMap(({ material: id, role, count }) => {
		const material = materials.get(id)
		return material === undefined || !(count > 0) ? [] : [{ material, role, count }]
	})
}

/** Weight of a line in kg; null while nobody has said what one piece weighs. */
export function lineKg({ material: { unit, piecesPerUnit, kgEach }, count }: Planned): number | null {
	if (unit === 'kg') return count
	return kgEach === null ? null : count * piecesPerUnit * kgEach
}

/** Weight of what is in a pot, in kg, as far as it is known. */
export const contentsKg = (lines: readonly Planned[]): number =>
	lines.reduce((sum, line) => sum + (lineKg(line) ?? 0), 0)

/** A cluster is one accent: its parts are not counted again. */
export const isCluster = ({ piece }: Pick<DesignMaterial, 'piece'>): boolean =>
	piece === 'cluster to make' || piece === 'cluster kept'

/** "noble fir, cedar and boxwood", each once. */
export const named = (lines: readonly Planned[]): string =>
	list([...new Set(lines.map(({ material: { name } }) => name))])

/** Lines of one material and role as one, with their counts summed. */
export function merged(lines: readonly Planned[]): Planned[] {
	const kin = (a: Planned, b: Planned) => a.material.id === b.material.id && a.role === b.role
	return lines
		.filter((line, at) => lines.findIndex((other) => kin(other, line)) === at)
		.map((line) => ({
			...line,
			count: lines.filter((other) => kin(other, line)).reduce((sum, { count }) => sum + count, 0),
		}))
}
