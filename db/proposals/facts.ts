import { and, asc, eq, inArray, isNull, notInArray, sql } from 'drizzle-orm'
import type { SiteColour } from '@/lib/colour/palette/palette'
import type { Card, Customer, Facts, Material, Site } from '@/lib/proposal/facts'
import { cents } from '@/lib/units/cents'
import type { ClientId, MaterialId, PersonId, ProposalId, SeasonId } from '@/lib/units/id'
import { designMaterials } from '../catalogue/design-materials'
import type { Reading } from '../open'
import { type client, contact, container, draftMaterial, pack, person, place, proposal, siteColour } from '../schema'
import { latestRates } from '../studio/rates'
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

/** Materials that another proposal of the season names, one that is still alive. */
function usedElsewhere(db: Reading, of: ProposalId, season: SeasonId): Set<MaterialId> {
	const rows = db
		.selectDistinct({ id: draftMaterial.materialId })
		.from(draftMaterial)
		.innerJoin(proposal, eq(proposal.id, draftMaterial.proposalId))
		.where(
			and(
				eq(proposal.seasonId, season),
				sql`${proposal.id} <> ${of}`,
				notInArray(proposal.state, ['skipped', 'withdrawn', 'cancelled']),
			),
		)
		.all()
	return new Set(rows.map(({ id }) => id))
}

/**
 * Every material with its cheapest pack per unit, freight included, how often the studio's own has stood outside, and
 * whether anybody else takes it.
 */
function materialsFor(db: Reading, of: ProposalId, seasonId: SeasonId): Facts['materials'] {
	const elsewhere = usedElsewhere(db, of, seasonId)
	const packs = db
		.select()
		.from(pack)
		.where(isNull(pack.retiredAt))
		.orderBy(sql`${pack.priceCents} * (100 + ${pack.freightPercent}) / ${pack.size} DESC`, asc(pack.id))
		.all()
	const best = new Map(packs.map((each) => [each.materialId, each]))
	return new Map(
		designMaterials(db).map(({ usesBefore, ...each }): [MaterialId, Material] => {
			const sold = best.get(each.id)
			const found = sold
				? { size: sold.size, cents: cents(sold.priceCents), freightPercent: sold.freightPercent }
				: null
			return [each.id, { ...each, pack: found, usesBefore, onlyHere: !elsewhere.has(each.id) }]
		}),
	)
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

/** What a draft is priced and shown with, as the record stands now. */
export function factsFor(db: Reading, { row, client: of, season, studio }: Found, designer: PersonId): Facts {
	const [signer] = db.select({ name: person.name }).from(person).where(eq(person.id, designer)).all()
	const { version, rates } = latestRates(db)
	return {
		proposal: row.id,
		studio: { name: studio.name, currency: studio.currency, lengths: studio.lengths },
		designer: signer?.name ?? studio.name,
		season: { quarter: season.quarter, year: season.year },
		customer: customer(of),
		hasApprover: hasApprover(db, of.id),
		sites: sitesOf(db, of.id),
		cards: cardsOf(db, of.id),
		materials: materialsFor(db, row.id, row.seasonId),
		ratesVersion: version,
		rates,
	}
}
