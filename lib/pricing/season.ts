import { type Cents, sum, zero } from '@/lib/units/cents'
import { allocate } from './allocate'
import type { Job } from './job'
import type { Part, Split } from './price-list'
import { type Settled, splitLike } from './settle'

const added = (splits: readonly Split[]): Split => ({
	plants: sum(splits.map(({ plants }) => plants)),
	goods: sum(splits.map(({ goods }) => goods)),
	labour: sum(splits.map(({ labour }) => labour)),
})

/** `amount` over the places of the parts that it pays for, in proportion to what those would cost. */
function spread(
	amount: Cents,
	covered: readonly Settled[],
	as: Pick<Part, 'bill' | 'name'> & { is: 'season' | 'supplement' },
): Part[] {
	const places = [...new Set(covered.map(({ gross }) => gross.place))]
	if (places.length === 0 || amount === 0) return []
	const splits = places.map((place) =>
		added(covered.filter(({ gross }) => gross.place === place).map(({ gross }) => gross.split)),
	)
	const shares = allocate(
		amount,
		splits.map(({ plants, goods, labour }) => sum([plants, goods, labour])),
	)
	return places.map((place, index) => {
		const share = shares[index] ?? zero
		return {
			...as,
			place,
			cents: share,
			split: splitLike(share, splits[index] ?? { plants: zero, goods: zero, labour: zero }),
		}
	})
}

/** A season priced fixed by the agreement, and what this option costs beyond it, which is billed apart. */
export function seasonParts({ agreement, supplementCents }: Job, covered: readonly Settled[]): Part[] {
	if (agreement.is !== 'fixed') return []
	return [
		...spread(agreement.cents, covered, {
			is: 'season',
			name: 'Season',
			bill: 'agreement',
		}),
		...spread(supplementCents, covered, {
			is: 'supplement',
			name: 'Supplement',
			bill: 'apart',
		}),
	]
}
