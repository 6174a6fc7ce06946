import 'server-only'
import { paperOf } from '@/app/documents/pdf/paper'
import type { ProposalPaper } from '@/app/documents/pdf/proposal/input'
import type { OfferPage } from '@/db/proposals/read-offer'
import { answerHolds } from '@/lib/proposal/offer/answer-holds'
import { approvalOf } from './approval'

/** What the file of a proposal is drawn from; undefined while no approval holds, or once its words are erased. */
export function approvedPaper({ offer, answer, state, hash, timeZone, lengths }: OfferPage): ProposalPaper | undefined {
	if (offer === undefined || answer?.kind !== 'approval' || !answerHolds(answer.kind, state.is)) return undefined
	return { offer, approval: approvalOf(answer, timeZone), hash, at: answer.at, paper: paperOf(lengths) }
}
