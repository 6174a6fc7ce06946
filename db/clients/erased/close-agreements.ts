import { and, eq, inArray } from 'drizzle-orm'
import type { Viewer } from '@/lib/access/viewer'
import { afterErasure } from '@/lib/agreement/ending/after-erasure'
import { signatureSchema } from '@/lib/agreement/signing/signature'
import { emptyTerms } from '@/lib/agreement/terms'
import type { Hash } from '@/lib/record/hash'
import { type Day, dayOf } from '@/lib/units/day'
import type { ClientId } from '@/lib/units/id'
import type { Tx } from '../../open'
import { append } from '../../record/append'
import { unseal } from '../../record/seal'
import { agreement, agreementDocument, agreementDraft, agreementSignature, studio } from '../../schema'
import type { Stamp } from '../../stamp'

/** What nobody but the studio ever saw. */
function deleteUnissued(tx: Tx, of: ClientId): void {
	const unseen = and(eq(agreement.clientId, of), eq(agreement.number, 0))
	const ids = tx.select({ id: agreement.id }).from(agreement).where(unseen)
	tx.delete(agreementDraft).where(inArray(agreementDraft.agreementId, ids)).run()
	tx.delete(agreement).where(unseen).run()
}

/** Pictures of what a client signed on paper; asked for while what is sealed can still be read. */
export function scansOf(tx: Tx, of: ClientId): Hash[] {
	return tx
		.select({ words: agreementSignature.words })
		.from(agreementSignature)
		.innerJoin(agreementDocument, eq(agreementDocument.hash, agreementSignature.document))
		.innerJoin(agreement, eq(agreement.id, agreementDocument.agreementId))
		.where(and(eq(agreement.clientId, of), eq(agreementSignature.side, 'client')))
		.all()
		.flatMap(({ words }) => {
			const given = signatureSchema.safeParse(unseal(tx, words))
			return given.success && given.data.is === 'on paper' ? [given.data.scan] : []
		})
}

function todayOf(tx: Tx, { at }: Pick<Stamp, 'at'>): Day {
	const [house] = tx.select({ timeZone: studio.timeZone }).from(studio).all()
	return dayOf(at, house?.timeZone ?? 'UTC')
}

/** An erased client's agreements: what was issued lies sealed; drafts go, what is out is taken back, what holds ends. */
export function closeAgreements(tx: Tx, stamp: Stamp, viewer: Viewer, of: ClientId): void {
	deleteUnissued(tx, of)
	const today = todayOf(tx, stamp)
	for (const row of tx.select().from(agreement).where(eq(agreement.clientId, of)).all()) {
		const { to, holdsUntil, is } = afterErasure(row, today)
		tx.update(agreement).set({ state: to, holdsUntil }).where(eq(agreement.id, row.id)).run()
		tx.update(agreementDraft)
			.set({ terms: JSON.stringify(emptyTerms) })
			.where(eq(agreementDraft.agreementId, row.id))
			.run()
		if (is !== null) append(tx, stamp, viewer, { act: `agreement ${is}`, object: `agreement ${row.id}`, client: of })
	}
}
