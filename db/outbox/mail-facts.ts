import { eq } from 'drizzle-orm'
import type { Viewer } from '@/lib/access/viewer'
import type { Offer } from '@/lib/proposal/offer'
import type { PersonId, ProposalId } from '@/lib/units/id'
import { read } from '../open'
import { offerIn, revisionOf } from '../proposals/documents'
import { answerTo, type GivenAnswer } from '../proposals/read-offer'
import { contact, person, proposal, studio } from '../schema'
import { denied } from '../viewer'

export type Addressee = {
	readonly name: string
	readonly address: string
	readonly handle: string
	readonly studio: string
}

/** To whom a mail goes and in whose name; undefined for nobody. */
export async function addressee(viewer: Viewer, id: PersonId): Promise<Addressee | undefined> {
	if (denied(viewer, 'send mail', null) !== null) return undefined
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
	readonly number: number
	/** That revision no longer stands: what it says is out of date. */
	readonly isStale: boolean
}

/** The revision that a mail reports; undefined once its words are erased. */
export async function mailedProposal(
	viewer: Viewer,
	{ proposal: id, number, person: to }: { proposal: ProposalId; number: number; person: PersonId },
): Promise<MailedProposal | undefined> {
	if (denied(viewer, 'send mail', null) !== null) return undefined
	return read((db) => {
		const [row] = db.select().from(proposal).where(eq(proposal.id, id)).all()
		const revision = revisionOf(db, id, number)
		const offer = revision && offerIn(db, revision)
		if (row === undefined || revision === undefined || offer === undefined) return undefined
		const contacts = db.select().from(contact).where(eq(contact.clientId, row.clientId)).all()
		const mayApprove = contacts.some((each) => each.personId === to && each.may === 'approve')
		return { offer, answer: answerTo(db, revision), mayApprove, number, isStale: number !== row.revisionNumber }
	})
}
