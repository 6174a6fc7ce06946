import { sum, zero } from '@/lib/units/cents'
import type { PlaceId } from '@/lib/units/id'
import { allocate } from '../allocate'
import type { Part, PriceList } from '../price-list'
import { splitLike } from '../settle'

const named = (part: Part) => ('container' in part ? part.container : 'extra' in part ? part.extra : '')

const isSame = (a: Part, b: Part) => a.is === b.is && a.place === b.place && named(a) === named(b)

/** The fixed price is one, whatever its places take: it is shared out by what it has at each in the list of that place. */
function seasons(own: readonly Part[], whole: readonly Part[]): Part[] {
	if (own.length === 0) return []
	const shares = allocate(
		sum(whole.map(({ cents }) => cents)),
		own.map(({ cents }) => cents),
	)
	return own.map((part, index) => {
		const cents = shares[index] ?? zero
		return { ...part, cents, split: splitLike(cents, part.split) }
	})
}

/**
 * One list out of several of the same offer: each place with the frozen amounts of the list that it takes, so that no
 * place changes the price of another. What comes with a visit is the same in all and stands once; a supplement is that
 * of each place's own list, for its place alone.
 * @throws when the lists are not of one offer
 */
export function mixedList(main: PriceList, listAt: (place: PlaceId) => PriceList): PriceList {
	const own = (part: Part): Part => {
		const found = listAt(part.place).parts.find((each) => isSame(each, part))
		if (found === undefined) throw new Error(`mixedList: "${part.name}" is not in every list`)
		return found
	}
	const isOf = (is: Part['is']) => (part: Part) => part.is === is
	const open = main.parts.filter(({ is }) => is !== 'season' && is !== 'supplement')
	const whole = main.parts.filter(isOf('season'))
	const supplements = main.tax.places.flatMap(({ place }) =>
		listAt(place).parts.filter((part) => part.is === 'supplement' && part.place === place),
	)
	return { ...main, parts: [...open.map(own), ...seasons(whole.map(own), whole), ...supplements] }
}
