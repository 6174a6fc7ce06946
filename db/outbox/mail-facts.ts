import { eq } from 'drizzle-orm'
import type { Viewer } from '@/lib/access/viewer'
import type { Offer } from '@/lib/proposal/offer/offer'
import type { Cents } from '@/lib/units/cents'
import type { PersonId, ProposalId } from '@/lib/units/id'
import { read } from '../open'
import { offerIn, revisionOf } from '../proposals/documents'
import { findProposal } from '../proposals/find'
import { answerTo, type GivenAnswer } from '../proposals/read-offer'
import { person, studio } from '../schema'
import type { Stamp } from '../stamp'
import { denied, viewerOf } from '../viewer'

export type Addressee = {
	readonly name: string
	readonly address: string
	readonly handle: string
	readonly studio: string
	/** Of the studio. */
	readonly timeZone: string
}

/** To whom a mail goes and in whose name; undefined for nobody, and for one to whom no door is open any more. */
export async function addressee(viewer: Viewer, id: PersonId): Promise<Addressee | undefined> {
	if (denied(viewer, 'send mail', null) !== null || (await viewerOf(id)).is === 'nobody') return undefined
	const [found] = read((db) =>
		db
			.select({
				name: person.name,
				address: person.email,
				handle: person.handle,
				studio: studio.name,
				timeZone: studio.timeZone,
			})
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
	/** Whether its reader works for the studio. */
	readonly isForStudio: boolean
	/** The answer is the reader's own. */
	readonly isOwn: boolean
	readonly timeZone: string
	/** What the address of its cover ends in; null of one that was published before there were covers. */
	readonly coverKey: string | null
	readonly number: number
	/** Of one that was cancelled: what is still to be paid. */
	readonly remains: Cents | null
	readonly isStanding: boolean
	/** That revision stands, and an answer to it is waited for. */
	readonly isWaiting: boolean
}

/** The revision that a mail reports; undefined once its words are erased or its reader may not see it any more. */
export async function mailedProposal(
	viewer: Viewer,
	{ proposal: id, number, person: to }: { proposal: ProposalId; number: number; person: PersonId },
	stamp: Pick<Stamp, 'at'>,
): Promise<MailedProposal | undefined> {
	if (denied(viewer, 'send mail', null) !== null) return undefined
	const reader = await viewerOf(to)
	return read((db) => {
		const found = findProposal(db, viewer, 'see the proposal', id, stamp)
		const revision = revisionOf(db, id, number)
		const offer = revision && offerIn(db, revision)
		if (!found.ok || revision === undefined || offer === undefined) return undefined
		const { clientId, revisionNumber, cardKey: coverKey, remainsCents: remains } = found.row
		if (denied(reader, 'see the proposal', clientId) !== null) return undefined
		const mayApprove = denied(reader, 'answer the proposal', clientId) === null
		const isStanding = number === revisionNumber
		const isWaiting = isStanding && found.state.is === 'waiting for an answer'
		const answer = answerTo(db, revision)
		const { timeZone } = found.studio
		const isForStudio = reader.is === 'staff'
		const isOwn = answer?.by === to
		return { offer, answer, mayApprove, isForStudio, isOwn, timeZone, coverKey, number, remains, isStanding, isWaiting }
	})
}
