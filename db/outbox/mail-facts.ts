import { eq } from 'drizzle-orm'
import type { Viewer } from '@/lib/access/viewer'
import type { Offer } from '@/lib/proposal/offer/offer'
import type { PersonId, ProposalId } from '@/lib/units/id'
import { read } from '../open'
import { offerIn, revisionOf } from '../proposals/documents'
import { answerTo, type GivenAnswer } from '../proposals/read-offer'
import { person, proposal, studio } from '../schema'
import { denied, viewerOf } from '../viewer'

export type Addressee = {
	readonly name: string
	readonly address: string
	readonly handle: string
	readonly studio: string
}

/** To whom a mail goes and in whose name; undefined for nobody, and for one to whom no door is open any more. */
export async function addressee(viewer: Viewer, id: PersonId): Promise<Addressee | undefined> {
	if (denied(viewer, 'send mail', null) !== null || (await viewerOf(id)).is === 'nobody') return undefined
	const [found] = read((db) =>
		db
			.select({ name: person.name, address: person.email, handle: person.handle, studio: studio.name })
			.from(person)
			.innerJoin(studio, eq(studio.id, 1))
			.where(eq(person.id, id))
			.all(),
	)
	return found
}

export type MailedProposal = {
	readonly offer: Offer
	readonly answer: GivenAnswer | undefined
	readonly mayApprove: boolean
	/** The answer is the reader's own. */
	readonly isOwn: boolean
	readonly timeZone: string
	readonly number: number
	/** That revision no longer stands: what it says is out of date. */
	readonly isStale: boolean
}

/** The revision that a mail reports; undefined once its words are erased or its reader may not see it any more. */
export async function mailedProposal(
	viewer: Viewer,
	{ proposal: id, number, person: to }: { proposal: ProposalId; number: number; person: PersonId },
): Promise<MailedProposal | undefined> {
	if (denied(viewer, 'send mail', null) !== null) return undefined
	const reader = await viewerOf(to)
	return read((db) => {
		const [found] = db
			.select({ row: proposal, timeZone: studio.timeZone })
			.from(proposal)
			.innerJoin(studio, eq(studio.id, 1))
			.where(eq(proposal.id, id))
			.all()
		const revision = revisionOf(db, id, number)
		const offer = revision && offerIn(db, revision)
		if (found === undefined || revision === undefined || offer === undefined) return undefined
		if (denied(reader, 'see the proposal', found.row.clientId) !== null) return undefined
		const { row, timeZone } = found
		const mayApprove = denied(reader, 'answer the proposal', row.clientId) === null
		const answer = answerTo(db, revision)
		const isStale = number !== row.revisionNumber
		return { offer, answer, mayApprove, isOwn: answer?.by === to, timeZone, number, isStale }
	})
}
