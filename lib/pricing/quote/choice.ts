import type { ContainerId } from '@/lib/units/id'
import type { PartOf } from '../price-list'

/** What a client takes of an option: the containers left out, the extras added. */
export type Choice = {
	readonly leftOut: readonly ContainerId[]
	readonly extras: readonly string[]
}

export const everything: Choice = { leftOut: [], extras: [] }

type Placed = PartOf & { readonly place: string }

/** The parts that a choice keeps: a place is visited while a container of it stays or an extra is added there. */
export function chosen<T extends Placed>(parts: readonly T[], { leftOut, extras }: Choice): T[] {
	const out = new Set<string>(leftOut)
	const added = new Set(extras)
	const stays = (part: Placed) => {
		if (part.is === 'extra') return added.has(part.extra)
		return !('container' in part && out.has(part.container))
	}
	const calls = parts.filter((part) => (part.is === 'container' || part.is === 'extra') && stays(part))
	const visited = new Set(calls.map(({ place }) => place))
	return parts.filter((part) => (part.is === 'travel' ? visited.has(part.place) : stays(part)))
}
