import { and, desc, eq } from 'drizzle-orm'
import type { Viewer } from '@/lib/access/viewer'
import type { Hash } from '@/lib/record/hash'
import type { Day, Moment } from '@/lib/units/day'
import type { Id, PersonId } from '@/lib/units/id'
import { documentIn } from '../agreements/documents'
import { findAgreement } from '../agreements/find'
import { declineWords } from '../agreements/signing/decline'
import { signaturesUnder } from '../agreements/signing/evidence'
import { type Reading, read } from '../open'
import { unseal } from '../record/seal'
import { agreementDocument, event } from '../schema'
import type { Stamp } from '../stamp'
import { denied, viewerOf } from '../viewer'

/** What a mail about an agreement says of it: no amount, so that whoever reads it may. */
export type MailedAgreement = {
	readonly client: string
	readonly from: Day
	readonly to: Day
	readonly number: number
	readonly hash: Hash
	readonly signBy: Day | null
	/** Of the one that was ended early. */
	readonly holdsUntil: Day | null
	readonly timeZone: string
	/** It was issued last, and a signature to it is waited for. */
	readonly isWaiting: boolean
	readonly isForStudio: boolean
	readonly signed: { readonly name: string; readonly at: Moment; readonly isOwn: boolean } | undefined
	/** Why it was declined, as its client wrote. */
	readonly declined: { readonly name: string; readonly reason: string } | undefined
}

function declinedWith(db: Reading, id: Id<'agreement'>): MailedAgreement['declined'] {
	const lines = and(eq(event.object, `agreement ${id}`), eq(event.act, 'agreement declined'))
	const [last] = db.select({ sealed: event.sealed }).from(event).where(lines).orderBy(desc(event.seq)).limit(1).all()
	return last?.sealed ? declineWords.safeParse(unseal(db, last.sealed)).data : undefined
}

function signedBy(db: Reading, hash: Hash, reader: PersonId): MailedAgreement['signed'] {
	const given = signaturesUnder(db, hash).find(({ side }) => side === 'client')
	const { signature } = given ?? {}
	if (given === undefined || signature === undefined) return undefined
	const name =
		signature.is === 'on a screen' ? signature.typedName : signature.is === 'on paper' ? signature.signer : ''
	return { name, at: given.at, isOwn: given.by === reader }
}

/** The document that a mail reports; undefined once its words are erased or its reader may not see it any more. */
export async function mailedAgreement(
	viewer: Viewer,
	{ agreement: id, number, person }: { agreement: Id<'agreement'>; number: number; person: PersonId },
	stamp: Pick<Stamp, 'at'>,
): Promise<MailedAgreement | undefined> {
	if (denied(viewer, 'send mail', null) !== null) return undefined
	const reader = await viewerOf(person)
	return read((db) => {
		const found = findAgreement(db, viewer, 'see the agreement', id, stamp)
		if (!found.ok || denied(reader, 'see the agreement', found.row.clientId) !== null) return undefined
		const named = and(eq(agreementDocument.agreementId, id), eq(agreementDocument.number, number))
		const [row] = db.select().from(agreementDocument).where(named).all()
		const document = row && documentIn(db, row.hash)
		if (row === undefined || document === undefined) return undefined
		const { hash, from, to } = row
		const { signBy, holdsUntil, issued } = found.row
		return {
			...{ client: document.client.name, from, to, number, hash, signBy, holdsUntil },
			timeZone: found.studio.timeZone,
			isWaiting: found.state.is === 'to be signed' && issued === hash,
			isForStudio: reader.is === 'staff',
			signed: signedBy(db, hash, person),
			declined: declinedWith(db, id),
		}
	})
}
