import { eq } from 'drizzle-orm'
import type { Viewer } from '@/lib/access/viewer'
import { startingTerms } from '@/lib/agreement/studio/starting'
import { dayOf } from '@/lib/units/day'
import type { ClientId } from '@/lib/units/id'
import { write } from '../../open'
import { client, studio } from '../../schema'
import type { Stamp } from '../../stamp'
import { denied, hidden } from '../../viewer'
import { type BegunAgreement, beginAgreementIn } from '../draft'
import { agreementFacts } from '../facts'

/** An agreement for a client that starts from what is known: the year to come, and every container. */
export async function beginAgreementFor(viewer: Viewer, of: ClientId, stamp: Stamp): Promise<BegunAgreement> {
	const no = denied(viewer, 'change agreements', of)
	if (no !== null || viewer.is !== 'staff') return no ?? hidden
	const { person } = viewer
	return write((tx): BegunAgreement => {
		const [found] = tx
			.select({ client, studio })
			.from(client)
			.innerJoin(studio, eq(studio.id, 1))
			.where(eq(client.id, of))
			.all()
		if (found === undefined) return hidden
		const { containers } = agreementFacts(tx, found, person)
		const today = dayOf(stamp.at, found.studio.timeZone)
		const terms = startingTerms(
			today,
			containers.map(({ id }) => id),
		)
		return beginAgreementIn(tx, viewer, { client: of, terms }, stamp)
	})
}
