import type { ProposalPaper } from '@/app/documents/pdf/proposal/input'
import type { Offer } from '@/lib/proposal/offer/offer'
import type { Approved } from '@/lib/proposal/offer/receipt'
import { hashOf } from '@/lib/record/hash'
import { day, moment } from '@/lib/units/day'
import { containerId, offerOf, placeId } from '../../../lib/proposal/sample'

/** One palette at the first door and the other at the second, with lights there and without the right urn. */
export const approval: Approved = {
	...{ reference: '2026-0012', on: day('2026-10-28'), by: 'by Ada Ninefold', purchaseOrder: 'PO 4471' },
	...{ option: 'a', places: { [placeId(2)]: 'b' }, extras: ['lights'], leftOut: [containerId(2)] },
}

export const proposalPaper = (offer: Offer = offerOf(), its: Partial<ProposalPaper> = {}): ProposalPaper => ({
	...{ offer, approval, hash: hashOf(offer), at: moment(new Date('2026-10-28T15:02:07Z')), paper: 'LETTER' },
	...its,
})
