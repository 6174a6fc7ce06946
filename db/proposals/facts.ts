import { and, asc, eq, inArray, isNull } from 'drizzle-orm'
import type { SiteColour } from '@/lib/colour/palette/palette'
import { materialsFor, type Shelf } from '@/lib/proposal/design/shelf'
import type { Card, Customer, Facts, Site } from '@/lib/proposal/facts'
import { cents } from '@/lib/units/cents'
import type { ClientId, PersonId, SeasonId } from '@/lib/units/id'
import { shelfIn } from '../catalogue/priced-materials'
import type { Reading } from '../open'
import { type client, contact, container, person, place, siteColour } from '../schema'
import { latestRates, type VersionedRates } from '../studio/rates'
import type { Found } from './find'

const centsOrNull = (amount: number | null) => (amount === null ? null : cents(amount))

function sitesOf(db: Reading, of: ClientId): Site[] {
	return db
		.select()
		.from(place)
		.where(eq(place.clientId, of))
		.orderBy(asc(place.position))
		.all()
		.map(
			({ id, name, address, wallKind, wallHex, doorHex, hardinessZone, taxMilliPercent, driveMinutes, zoneCents }) => ({
				id,
				name,
				address,
				wall: { kind: wallKind, hex: wallHex },
				door: doorHex,
				zone: hardinessZone,
				taxMilliPercent,
				driveMinutes,
				zoneCents: centsOrNull(zoneCents),
			}),
		)
}

function cardsOf(db: Reading, of: ClientId): Card[] {
	return db
		.select({ card: container })
		.from(container)
		.innerJoin(place, eq(place.id, container.placeId))
		.where(and(eq(place.clientId, of), isNull(container.retiredAt)))
		.orderBy(asc(place.position), asc(container.position))
		.all()
		.map(({ card: { placeId, ...card } }) => ({ ...card, place: placeId }))
}

function customer({ name, kind, netDays, exemptCertificate, exemptExpires }: typeof client.$inferSelect): Customer {
	const exempt =
		exemptCertificate === null || exemptExpires === null
			? null
			: { certificate: exemptCertificate, expires: exemptExpires }
	return { name, kind, netDays, exempt }
}

function hasApprover(db: Reading, of: ClientId): boolean {
	const who = and(eq(contact.clientId, of), eq(contact.may, 'approve'), isNull(contact.endedAt))
	return db.select({ id: contact.id }).from(contact).where(who).limit(1).all().length > 0
}

/** The colours that the designer saw at the client's places, in the order of the places. */
export function siteColoursOf(db: Reading, { sites }: Pick<Facts, 'sites'>): SiteColour[] {
	const { name, hex, side, position, placeId } = siteColour
	const of = sites.map(({ id }) => id)
	const rows = db
		.select({ name, hex, side, placeId })
		.from(siteColour)
		.where(inArray(placeId, of))
		.orderBy(asc(position))
		.all()
	return of.flatMap((place) => rows.filter((row) => row.placeId === place).map(({ placeId: _, ...colour }) => colour))
}

/** What is the same for every client of a season, read once where many are gone through. */
export type Shared = VersionedRates & { readonly designer: string; readonly shelf: Shelf }

export function sharedIn(db: Reading, season: SeasonId, designer: PersonId): Shared {
	const [signer] = db.select({ name: person.name }).from(person).where(eq(person.id, designer)).all()
	return { ...latestRates(db), designer: signer?.name ?? '', shelf: shelfIn(db, season) }
}

/** What a draft is priced and shown with, as the record stands now. */
export function factsFor(
	db: Reading,
	{ row, client: of, season, studio }: Pick<Found, 'row' | 'client' | 'season' | 'studio'>,
	designer: PersonId,
	shared: Shared = sharedIn(db, row.seasonId, designer),
): Facts {
	return {
		proposal: row.id,
		studio: { name: studio.name, currency: studio.currency, lengths: studio.lengths },
		designer: shared.designer || studio.name,
		season: { quarter: season.quarter, year: season.year },
		customer: customer(of),
		hasApprover: hasApprover(db, of.id),
		sites: sitesOf(db, of.id),
		cards: cardsOf(db, of.id),
		materials: materialsFor(shared.shelf, row.id),
		ratesVersion: shared.version,
		rates: shared.rates,
	}
}
