import type { AgreementDocument } from '@/lib/agreement/document/document'
import { type Clash, clashes, type SeasonApproved, type SeasonsAgreed } from '@/lib/money/bills/clashes'
import type { Reading } from '../open'
import { agreedWith } from './bills/agreed'
import { approvedBy } from './bills/approved'
import type { FoundAccount } from './find'

const seasonsOf = ({ seasons }: Pick<AgreementDocument, 'seasons'>) =>
	seasons.filter(({ price }) => price.is === 'fixed')

function approvalsIn(db: Reading, { client }: FoundAccount): SeasonApproved[] {
	return approvedBy(db, client.id)
		.filter(({ approval }) => approval.since.is !== 'cancelled')
		.map(({ approval: { proposal, approvedOn, quote }, season }) => {
			const isByAgreement = quote.due.some(({ when }) => when.is === 'by agreement')
			return { proposal, season, approvedOn, isByAgreement }
		})
}

function agreedIn(db: Reading, found: FoundAccount): SeasonsAgreed[] {
	return agreedWith(db, found, new Map()).map(({ agreed: { agreement }, document, endedOn }) => ({
		...{ agreement, endedOn },
		seasons: seasonsOf(document),
	}))
}

/**
 * Seasons that would be asked for twice, once that approval or that document (in the place of what is in force of its
 * agreement) is in the record. A season that was priced by an agreement on paper, and is billed by none that is kept here,
 * is no reason to refuse its approval.
 */
export function billedTwice(
	db: Reading,
	found: FoundAccount,
	next: { readonly approval?: SeasonApproved; readonly document?: AgreementDocument },
): Clash[] {
	const { approval, document } = next
	const approvals = approvalsIn(db, found).filter(({ proposal }) => proposal !== approval?.proposal)
	const agreed = agreedIn(db, found).filter(({ agreement }) => agreement !== document?.agreement)
	const signed =
		document === undefined ? [] : [{ agreement: document.agreement, seasons: seasonsOf(document), endedOn: null }]
	const all = clashes([...approvals, ...(approval === undefined ? [] : [approval])], [...agreed, ...signed])
	return all.filter(({ is }) => is !== 'billed by neither')
}
