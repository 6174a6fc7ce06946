import { substitutes, type Wanted } from '../../recipe/library/substitutes'
import type { DesignMaterial } from '../../recipe/traits'
import type { MaterialId } from '../../units/id'

/** By materials that are no longer taken: what stands in for each, null where nothing can. */
export type StandIns = ReadonlyMap<MaterialId, MaterialId | null>
export type Stood = { readonly standIns: StandIns; readonly told: readonly string[] }

type Shelved = DesignMaterial & { readonly isRetired: boolean }

/** Counted alike, and alive only where the old one was. */
const isAlike = (a: Shelved, b: Shelved): boolean =>
	a.unit === b.unit && (a.kind === 'live') === (b.kind === 'live') && (a.kind === 'light') === (b.kind === 'light')

function standInFor(old: Shelved, named: ReadonlySet<MaterialId>, taken: readonly Shelved[], wanted: Wanted) {
	const alike = taken.filter((each) => isAlike(each, old))
	const found = substitutes(old, alike, wanted).map(({ material }) => material)
	return found.find(({ id }) => !named.has(id)) ?? found[0]
}

/** What stands in for those of `ids` that the catalogue has retired or does not know, and how it is told. */
export function standInsFor(
	ids: readonly MaterialId[],
	materials: ReadonlyMap<MaterialId, Shelved>,
	wanted: Wanted,
): Stood {
	const named = new Set(ids)
	const taken = [...materials.values()].filter(({ isRetired }) => !isRetired)
	const all = [...named].flatMap((id) => {
		const old = materials.get(id)
		if (old !== undefined && !old.isRetired) return []
		const stands = old && standInFor(old, named, taken, wanted)
		const called = old?.name ?? 'a material that is not in the catalogue'
		const says =
			stands === undefined
				? `Left out, since nothing like it is taken any more: ${called}.`
				: `Instead of ${called}, no longer taken: ${stands.name}.`
		return { id, stands: stands?.id ?? null, says }
	})
	return {
		standIns: new Map(all.map(({ id, stands }) => [id, stands])),
		told: all.map(({ says }) => says),
	}
}

/** Lines of materials that are taken: those that nothing stands in for are left out. */
export function withStandIns<Line extends { readonly material: MaterialId }>(
	lines: readonly Line[],
	standIns: StandIns,
): Line[] {
	return lines.flatMap((line) => {
		const stands = standIns.get(line.material)
		if (stands === null) return []
		return stands === undefined ? line : { ...line, material: stands }
	})
}
