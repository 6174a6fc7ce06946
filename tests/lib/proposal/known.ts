import fc from 'fast-check'
import type { Draft } from '@/lib/proposal/draft'
import { draftsOf } from './arbitrary'
import { containerId, draft, materialId, placeId } from './sample'

/** Drafts that name what the sample knows, and now and then what it does not. */
const random = draftsOf({
	containers: fc.constantFrom(1, 2, 3, 3, 2, 1, 9).map(containerId),
	materials: fc.constantFrom(1, 2, 3, 4, 5, 6, 7, 9).map(materialId),
	places: fc.constantFrom(1, 2, 1, 2, 3).map(placeId),
})

/** The random ones, and the ready one with parts of a random one in it. */
export const knownDrafts: fc.Arbitrary<Draft> = fc.oneof(
	random,
	random.map(({ agreement, design, takeDown, letter }) => ({
		...draft,
		...(agreement.is !== 'fixed' && { agreement }),
		design,
		takeDown,
		letter: letter || 'Dear Ada',
	})),
	random.map(({ options, extras }) => ({ ...draft, options, extras })),
)
