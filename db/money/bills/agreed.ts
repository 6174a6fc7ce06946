import { and, asc, eq } from 'drizzle-orm'
import type { AgreementDocument } from '@/lib/agreement/document/document'
import type { Happened } from '@/lib/agreement/instalment/due-day'
import { agreedOf } from '@/lib/money/bills/agreed'
import { type AgreedTax, isAgreedTaxed } from '@/lib/money/bills/instalment-charge'
import type { Agreed } from '@/lib/money/bills/of-agreement'
import type { Charge } from '@/lib/money/charge'
import { type Day, dayOf } from '@/lib/units/day'
import type { ClientId } from '@/lib/units/id'
import { documentIn } from '../../agreements/documents'
import type { Reading } from '../../open'
import { agreement, agreementDocument, agreementSignature, place, season, visit } from '../../schema'
import { latestRates } from '../../studio/rates'
import type { FoundAccount } from '../find'

/** An agreement that both have signed, as it is billed. */
export type SignedAgreement = {
	readonly agreed: Agreed
	readonly document: AgreementDocument
	readonly exemptCertificate: string | null
	readonly endedOn: Day | null
}

/** Days on which a visit of that kind and season was made, each once, the first first: an install of two places is one visit where it is one day. */
function madeFor(db: Reading, of: ClientId): Happened['madeOn'] {
	const made = db
		.selectDistinct({ kind: visit.kind, quarter: season.quarter, year: season.year, day: visit.day })
		.from(visit)
		.innerJoin(season, eq(season.id, visit.seasonId))
		.where(and(eq(visit.clientId, of), eq(visit.state, 'done')))
		.orderBy(asc(visit.day))
		.all()
	return ({ visit: kind, season: { quarter, year }, number }) => {
		const days = made.filter((each) => each.kind === kind && each.quarter === quarter && each.year === year)
		return days[number - 1]?.day ?? null
	}
}

/** Documents with the client's signature, the first first; none of a client whose words are erased. */
function signedOf(db: Reading, { id }: Pick<typeof agreement.$inferSelect, 'id'>) {
	return db
		.select({ hash: agreementDocument.hash, at: agreementSignature.at })
		.from(agreementDocument)
		.innerJoin(agreementSignature, eq(agreementSignature.document, agreementDocument.hash))
		.where(and(eq(agreementDocument.agreementId, id), eq(agreementSignature.side, 'client')))
		.orderBy(asc(agreementDocument.number))
		.all()
		.flatMap(({ hash, at }) => {
			const document = documentIn(db, hash)
			return document === undefined ? [] : [{ document, at }]
		})
}

/** A certificate counts while it holds. */
function exemptionOf({ client, today }: FoundAccount): string | null {
	const { exemptCertificate, exemptExpires } = client
	return exemptExpires !== null && exemptExpires >= today ? exemptCertificate : null
}

function taxOf(db: Reading, { client }: FoundAccount, document: AgreementDocument, isExempt: boolean): AgreedTax {
	const named = document.seasons.flatMap(({ price, containers }) => (price.is === 'fixed' ? containers : []))
	const at = new Map(document.containers.map(({ id, place: where }) => [id, where]))
	const places = db
		.select({ id: place.id, milliPercent: place.taxMilliPercent })
		.from(place)
		.where(eq(place.clientId, client.id))
		.orderBy(asc(place.position))
		.all()
		.map(({ id, milliPercent }) => ({ milliPercent, containers: named.filter((each) => at.get(each) === id).length }))
	return { isTaxed: !isExempt && isAgreedTaxed(latestRates(db).rates), places }
}

/** Every agreement of a client that both have signed, whether it holds, has run out or was ended. */
export function agreedWith(db: Reading, found: FoundAccount, asked: ReadonlyMap<string, Charge>): SignedAgreement[] {
	const madeOn = madeFor(db, found.client.id)
	const exemptCertificate = exemptionOf(found)
	return db
		.select()
		.from(agreement)
		.where(eq(agreement.clientId, found.client.id))
		.orderBy(asc(agreement.createdAt), asc(agreement.id))
		.all()
		.flatMap((row) => {
			const signed = signedOf(db, row)
			const [first] = signed
			const document = signed.at(-1)?.document
			if (first === undefined || document === undefined) return []
			const wasCut = row.state === 'ended' && row.holdsUntil !== null && row.holdsUntil < document.to
			const endedOn = wasCut ? row.holdsUntil : null
			const agreed = agreedOf({
				documents: signed.map((each) => each.document),
				signedOn: dayOf(first.at, found.studio.timeZone),
				...{ madeOn, endedOn, asked },
				tax: taxOf(db, found, document, exemptCertificate !== null),
			})
			return [{ agreed, document, exemptCertificate, endedOn }]
		})
}
