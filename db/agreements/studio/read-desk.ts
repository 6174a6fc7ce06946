import { eq } from 'drizzle-orm'
import type { Viewer } from '@/lib/access/viewer'
import { documentChanges } from '@/lib/agreement/document/changes'
import type { AgreementDocument } from '@/lib/agreement/document/document'
import { makeDocument } from '@/lib/agreement/document/make'
import { type Ending, endingSchema } from '@/lib/agreement/ending/ending'
import type { AgreementFacts } from '@/lib/agreement/facts'
import { type Signature, signatureSchema } from '@/lib/agreement/signing/signature'
import { type FilledClause, fill } from '@/lib/agreement/template/fill'
import { fillingOf } from '@/lib/agreement/template/filling'
import type { Template } from '@/lib/agreement/template/template'
import type { Terms } from '@/lib/agreement/terms'
import type { Change } from '@/lib/proposal/offer/changes'
import type { Problem } from '@/lib/proposal/problem'
import type { Hash } from '@/lib/record/hash'
import type { Moment } from '@/lib/units/day'
import type { Id } from '@/lib/units/id'
import { type Reading, read } from '../../open'
import { unseal } from '../../record/seal'
import { agreementOpening, agreementSignature, person } from '../../schema'
import type { Stamp } from '../../stamp'
import { documentIn } from '../documents'
import { termsOf } from '../draft'
import { agreementFacts } from '../facts'
import { type FoundAgreement, findAgreement } from '../find'
import { latestTemplate } from '../template'

export type OnDesk = Pick<FoundAgreement, 'row' | 'client' | 'state' | 'today'> & {
	readonly timeZone: string
	readonly currency: string
	readonly version: number
	readonly terms: Terms
	readonly facts: AgreementFacts
	readonly template: Template
	/** The text as it would be issued; what is open stands in braces. */
	readonly clauses: readonly FilledClause[]
	readonly problems: readonly Problem[]
	/** From what was issued last; undefined where nothing was, or something is missing. */
	readonly changes: readonly Change[] | undefined
	readonly signatures: readonly { readonly at: Moment; readonly signature: Signature | undefined }[]
	readonly openings: readonly { readonly name: string; readonly as: 'page' | 'PDF'; readonly at: Moment }[]
	readonly ending: Ending | undefined
}

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
			...{
				row,
				client,
				state,
				today,
				timeZone: studio.timeZone,
				currency: studio.currency,
				version,
				terms,
				facts,
				template,
			},
			clauses: fill(template, fillingOf(terms, facts), terms.without).clauses,
			problems: made.ok ? [] : made.problems,
			changes: shown === null ? undefined : changed(documentIn(db, shown), made),
			signatures: shown === null ? [] : signaturesTo(db, shown),
			openings: shown === null ? [] : openingsTo(db, shown),
			ending: row.ending === null ? undefined : endingSchema.safeParse(unseal(db, row.ending)).data,
		}
	})
}
