import { and, desc, eq } from 'drizzle-orm'
import type { Viewer } from '@/lib/access/viewer'
import { documentChanges } from '@/lib/agreement/document/changes'
import type { AgreementDocument } from '@/lib/agreement/document/document'
import { makeDocument } from '@/lib/agreement/document/make'
import { endingSchema } from '@/lib/agreement/ending/ending'
import { signatureSchema } from '@/lib/agreement/signing/signature'
import type { OnDesk } from '@/lib/agreement/studio/shown'
import { fill } from '@/lib/agreement/template/fill'
import { fillingOf } from '@/lib/agreement/template/filling'
import type { Hash } from '@/lib/record/hash'
import type { Id } from '@/lib/units/id'
import { type Reading, read } from '../../open'
import { unseal } from '../../record/seal'
import { agreementOpening, agreementSignature, event, person } from '../../schema'
import type { Stamp } from '../../stamp'
import { billedTwiceProblems } from '../billed-twice'
import { documentIn } from '../documents'
import { termsOf } from '../draft'
import { agreementFacts } from '../facts'
import { findAgreement } from '../find'
import { declineWords } from '../signing/decline'
import { latestTemplate } from '../template'

const signaturesTo = (db: Reading, hash: Hash) =>
	db
		.select()
		.from(agreementSignature)
		.where(eq(agreementSignature.document, hash))
		.orderBy(agreementSignature.at)
		.all()
		.map(({ at, words }) => ({ at, signature: signatureSchema.safeParse(unseal(db, words)).data }))

const openingsTo = (db: Reading, hash: Hash) =>
	db
		.select({ name: person.name, as: agreementOpening.as, at: agreementOpening.at })
		.from(agreementOpening)
		.innerJoin(person, eq(person.id, agreementOpening.personId))
		.where(eq(agreementOpening.document, hash))
		.orderBy(agreementOpening.at)
		.all()

/** The reason that was given when it was declined last. */
function declinedWith(db: Reading, id: Id<'agreement'>): string | undefined {
	const [line] = db
		.select({ sealed: event.sealed })
		.from(event)
		.where(and(eq(event.object, `agreement ${id}`), eq(event.act, 'agreement declined')))
		.orderBy(desc(event.seq))
		.limit(1)
		.all()
	const words = line?.sealed == null ? undefined : declineWords.safeParse(unseal(db, line.sealed)).data
	return words?.reason
}

type Made = ReturnType<typeof makeDocument>
const changed = (before: AgreementDocument | undefined, made: Made) =>
	before === undefined || !made.ok ? undefined : documentChanges(before, made.document)

/** All that the studio's page of an agreement shows. */
export async function agreementDesk(
	viewer: Viewer,
	id: Id<'agreement'>,
	stamp: Pick<Stamp, 'at'>,
): Promise<OnDesk | undefined> {
	return read((db): OnDesk | undefined => {
		const found = findAgreement(db, viewer, 'change agreements', id, stamp)
		if (!found.ok || viewer.is !== 'staff') return undefined
		const { row, client, state, today, studio } = found
		const { version, terms } = termsOf(db, id)
		const [facts, template] = [agreementFacts(db, found, viewer.person), latestTemplate(db)]
		const made = makeDocument(terms, facts, template, {
			...{ agreement: id, number: row.number + 1, supersedes: row.issued },
		})
		const shown = row.issued
		return {
			row: { ...row, client: client.id, name: client.name, state },
			...{
				today,
				timeZone: studio.timeZone,
				currency: studio.currency,
				version,
				terms,
				facts,
				template,
			},
			clauses: fill(template, fillingOf(terms, facts), terms.without).clauses,
			problems: made.ok ? billedTwiceProblems(db, found, made.document) : made.problems,
			changes: shown === null ? undefined : changed(documentIn(db, shown), made),
			signatures: shown === null ? [] : signaturesTo(db, shown),
			openings: shown === null ? [] : openingsTo(db, shown),
			declined: state.is === 'declined' ? declinedWith(db, row.id) : undefined,
			ending: row.ending === null ? undefined : endingSchema.safeParse(unseal(db, row.ending)).data,
		}
	})
}
