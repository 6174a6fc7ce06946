import { eq } from 'drizzle-orm'
import type { Viewer } from '@/lib/access/viewer'
import type { Opened } from '@/lib/agreement/signing/page'
import type { Id, PersonId } from '@/lib/units/id'
import { type Reading, read, write } from '../../open'
import { append } from '../../record/append'
import { agreement, agreementOpening } from '../../schema'
import type { Stamp } from '../../stamp'
import { type FoundAgreement, findAgreement } from '../find'
import { openingsOf } from './evidence'

export type Opening = { readonly agreement: Id<'agreement'>; readonly as: Opened['as'] }

type ToOpen = { readonly found: FoundAgreement; readonly person: PersonId }

/** What waits for a signature and was not opened so by them before. */
function unopened(db: Reading, viewer: Viewer, opening: Opening, stamp: Pick<Stamp, 'at'>): ToOpen | undefined {
	const found = findAgreement(db, viewer, 'sign the agreement', opening.agreement, stamp)
	if (!found.ok || viewer.is !== 'contact' || found.state.is !== 'to be signed') return undefined
	const { issued } = found.state
	const before = openingsOf(db, issued, viewer.person)
	return before.some(({ as }) => as === opening.as) ? undefined : { found, person: viewer.person }
}

/** Notes that somebody who may sign opened the document that waits: once for each way, so that reading it again writes nothing. */
export async function markOpened(viewer: Viewer, opening: Opening, stamp: Stamp): Promise<void> {
	if (read((db) => unopened(db, viewer, opening, stamp)) === undefined) return
	write((tx) => {
		const opened = unopened(tx, viewer, opening, stamp)
		if (opened === undefined || opened.found.row.issued === null) return
		const { id, clientId: client, number, issued: document, seenAt } = opened.found.row
		const { as } = opening
		tx.insert(agreementOpening)
			.values({ id: stamp.id<'opening'>(), document, personId: opened.person, as, at: stamp.at })
			.run()
		if (seenAt === null) tx.update(agreement).set({ seenAt: stamp.at }).where(eq(agreement.id, id)).run()
		append(tx, stamp, viewer, {
			act: 'agreement opened',
			object: `agreement ${id}`,
			client,
			facts: { number, document, as },
		})
	})
}
