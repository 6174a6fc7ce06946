import { capital, list } from '../../../format/words'
import { type Finding, finding } from '../../../recipe/check/finding'
import type { ContainerId, MaterialId } from '../../../units/id'
import type { DraftOption } from '../../draft'
import type { Card, Facts, Material } from '../../facts'

type Known = Pick<Material, 'id' | 'name' | 'onlyHere' | 'inStock'>

function said({ id, name }: Known): Finding {
	const says = `${capital(name)} is in nobody else’s design this season: whole packs are bought for this client alone.`
	return finding(`alone/${id}`, 'caution', says, 'Use it at another client too, or take something that others use.')
}

/** Of those that `open` findings are about, in one sentence; none where there is no such thing. */
export function aloneInWords(open: readonly Pick<Finding, 'key'>[], materials: Facts['materials']): string[] {
	const lone = [...materials.values()].filter(({ id }) => open.some(({ key }) => key.startsWith(`alone/${id}/`)))
	const names = lone.map(({ name }) => name)
	if (names.length === 0) return []
	const are = names.length === 1 ? 'is' : 'are'
	return [
		`${capital(list(names))} ${are} in nobody else’s design this season: whole packs are bought for this client alone.`,
	]
}

/** What is bought for a pot: not what is the client's own. */
const boughtFor = ({ pots }: DraftOption, container: ContainerId): MaterialId[] =>
	pots
		.filter((pot) => pot.container === container)
		.flatMap(({ lines }) => lines)
		.filter(({ holding, count }) => holding !== 'own' && count.value > 0)
		.map(({ material }) => material)

/**
 * Materials that are bought for this client alone, each said at the first container that takes it: no other proposal of
 * the season names them, and storage holds none. Nothing while nobody else's season is designed at all.
 */
export function aloneIn(
	option: DraftOption,
	cards: readonly Pick<Card, 'id'>[],
	materials: Facts['materials'],
): ReadonlyMap<ContainerId, readonly Finding[]> {
	const isFirst = [...materials.values()].every(({ onlyHere }) => onlyHere)
	const told = new Set<MaterialId>()
	return new Map(
		cards.map(({ id }) => {
			const fresh = isFirst ? [] : boughtFor(option, id).filter((of) => !told.has(of))
			for (const of of fresh) told.add(of)
			const lone = [...new Set(fresh)].flatMap((of) => materials.get(of) ?? [])
			return [id, lone.filter(({ onlyHere, inStock }) => onlyHere && inStock === 0).map(said)]
		}),
	)
}
