import { and, eq, isNotNull, ne } from 'drizzle-orm'
import type { AgreementDocument } from '@/lib/agreement/document/document'
import { clashes, type SeasonsAgreed } from '@/lib/money/bills/clashes'
import type { ClientId, Id } from '@/lib/units/id'
import type { Reading } from '../../open'
import { agreement } from '../../schema'
import { documentIn } from '../documents'

const priced = ({ seasons }: Pick<AgreementDocument, 'seasons'>) => seasons.filter(({ price }) => price.is === 'fixed')

/** Whether another agreement of the client that both have signed asks for a season that this one asks for. */
export function isBilledTwice(
	db: Reading,
	{ id, clientId }: { readonly id: Id<'agreement'>; readonly clientId: ClientId },
	document: AgreementDocument,
): boolean {
	const others = db
		.select()
		.from(agreement)
		.where(and(eq(agreement.clientId, clientId), ne(agreement.id, id), isNotNull(agreement.inForce)))
		.all()
	const agreed = others.flatMap((other): SeasonsAgreed[] => {
		const held = other.inForce === null ? undefined : documentIn(db, other.inForce)
		const endedOn = other.state === 'ended' ? other.holdsUntil : null
		return held === undefined ? [] : [{ agreement: other.id, seasons: priced(held), endedOn }]
	})
	return clashes([], [...agreed, { agreement: id, seasons: priced(document), endedOn: null }]).length > 0
}
