import { and, asc, eq } from 'drizzle-orm'
import type { Happened } from '@/lib/agreement/instalment/due-day'
import { signatureSchema } from '@/lib/agreement/signing/signature'
import type { Hash } from '@/lib/record/hash'
import { type Day, dayOf } from '@/lib/units/day'
import type { ClientId } from '@/lib/units/id'
import type { Reading } from '../../open'
import { unseal } from '../../record/seal'
import { agreementSignature, season, visit } from '../../schema'

/** The day on which the client signed: the one written on the paper, else that of the screen. */
function signedOn(db: Reading, document: Hash, timeZone: string): Day | null {
	const theirs = and(eq(agreementSignature.document, document), eq(agreementSignature.side, 'client'))
	const [row] = db.select().from(agreementSignature).where(theirs).all()
	if (row === undefined) return null
	const given = signatureSchema.safeParse(unseal(db, row.words))
	return given.success && given.data.is === 'on paper' ? given.data.signedOn : dayOf(row.at, timeZone)
}

/** What has happened of an agreement: its signing, and each visit that was made, in the order of days. */
export function happenedOf(
	db: Reading,
	{ client, document, timeZone }: { client: ClientId; document: Hash; timeZone: string },
): Happened {
	const made = db
		.select({ kind: visit.kind, day: visit.day, quarter: season.quarter, year: season.year })
		.from(visit)
		.innerJoin(season, eq(season.id, visit.seasonId))
		.where(and(eq(visit.clientId, client), eq(visit.state, 'done')))
		.orderBy(asc(visit.day), asc(visit.id))
		.all()
	return {
		approvedOn: signedOn(db, document, timeZone),
		madeOn: ({ season: of, visit: kind, number }) =>
			made.filter((each) => each.kind === kind && each.quarter === of.quarter && each.year === of.year)[number - 1]
				?.day ?? null,
	}
}
