import { and, asc, eq, isNull } from 'drizzle-orm'
import type { AgreementFacts } from '@/lib/agreement/facts'
import { vesselWords } from '@/lib/container/vessel-words'
import { isCurrency } from '@/lib/format/money'
import type { PersonId } from '@/lib/units/id'
import type { Reading } from '../open'
import { type client, container, person, place, type studio } from '../schema'

type Of = { readonly client: typeof client.$inferSelect; readonly studio: typeof studio.$inferSelect }

/** What an agreement of a client is made from beside its terms, as the record stands now. */
export function agreementFacts(db: Reading, { client: of, studio: house }: Of, designer: PersonId): AgreementFacts {
	if (!isCurrency(house.currency)) throw new Error(`agreementFacts: "${house.currency}" is no currency of the studio`)
	const [signer] = db.select({ name: person.name }).from(person).where(eq(person.id, designer)).all()
	const places = db
		.select({ id: place.id, name: place.name, address: place.address })
		.from(place)
		.where(eq(place.clientId, of.id))
		.orderBy(asc(place.position))
		.all()
	const containers = db
		.select({ card: container })
		.from(container)
		.innerJoin(place, eq(place.id, container.placeId))
		.where(and(eq(place.clientId, of.id), isNull(container.retiredAt)))
		.orderBy(asc(place.position), asc(container.position))
		.all()
	return {
		currency: house.currency,
		studio: { name: house.name, signedBy: signer?.name || house.name },
		client: { id: of.id, name: of.name },
		places,
		containers: containers.map(({ card }) => ({
			id: card.id,
			place: card.placeId,
			name: card.name,
			words: vesselWords(card, house.lengths),
		})),
	}
}
