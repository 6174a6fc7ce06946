import { and, asc, eq, inArray, isNotNull, isNull, ne, sql } from 'drizzle-orm'
import type { Viewer } from '@/lib/access/viewer'
import { type Brought, marginBeside } from '@/lib/agreement/renewal/margin-beside'
import { type Renewal, type Renewed, renewed } from '@/lib/agreement/renewal/renewed'
import type { Endings } from '@/lib/agreement/studio/shown'
import type { Terms } from '@/lib/agreement/terms'
import type { Problem } from '@/lib/proposal/problem'
import type { Season } from '@/lib/season/season'
import { type Day, dayOf } from '@/lib/units/day'
import type { ClientId, Id } from '@/lib/units/id'
import { type Reading, read, write } from '../../open'
import { agreement, client, proposal, season, studio } from '../../schema'
import type { Stamp } from '../../stamp'
import { type Denied, denied } from '../../viewer'
import { documentIn } from '../documents'
import { beginAgreementIn, termsOf } from '../draft'
import { findAgreement } from '../find'
import { type IssuedAs, issueIn } from '../issue'

/** What both have signed, as terms: the document's own seasons, plan and days, with what was said beside them. */
function lastTerms(db: Reading, { id, inForce }: typeof agreement.$inferSelect): Terms | undefined {
	const document = inForce === null ? undefined : documentIn(db, inForce)
	if (document === undefined) return undefined
	const { from, to, seasons, plan } = document
	return { ...termsOf(db, id).terms, from, to, seasons, plan }
}

type Broughts = ReadonlyMap<string, Brought>
const seasonKey = (of: ClientId, { quarter, year }: Season) => `${of} ${quarter} ${year}`

/** What each client has approved, by season. */
function broughtIn(db: Reading): Broughts {
	const rows = db
		.select({
			...{ of: proposal.clientId, quarter: season.quarter, year: season.year },
			...{ valueCents: proposal.valueCents, marginTenths: proposal.marginTenths },
		})
		.from(proposal)
		.innerJoin(season, eq(season.id, proposal.seasonId))
		.where(inArray(proposal.state, ['approved', 'installed']))
		.all()
	return new Map(
		rows.flatMap(({ of, valueCents, marginTenths, ...when }) =>
			valueCents === null ? [] : [[seasonKey(of, when), { valueCents, marginTenths }] as const],
		),
	)
}

const marginsOf = (of: ClientId, { seasons }: Renewed, broughts: Broughts) =>
	seasons.map(({ season: { quarter, year }, difference }) =>
		difference === null ? null : marginBeside(broughts.get(seasonKey(of, { quarter, year: year - 1 })), difference),
	)

/** Every agreement that both have signed and that ends in a year, beside what it would be for the next. */
export async function endingIn(
	viewer: Viewer,
	year: number,
	renewalOf: (id: Id<'agreement'>) => Renewal,
	{ at }: Pick<Stamp, 'at'>,
): Promise<Endings | undefined> {
	if (denied(viewer, 'change agreements', null) !== null) return undefined
	return read((db) => {
		const [house] = db.select().from(studio).all()
		if (house === undefined) return undefined
		const ends = sql`substr(${agreement.holdsUntil}, 1, 4) = ${String(year)}`
		const rows = db
			.select({ row: agreement, client })
			.from(agreement)
			.innerJoin(client, eq(client.id, agreement.clientId))
			.where(and(isNotNull(agreement.inForce), ne(agreement.state, 'ended'), ends, isNull(client.archivedAt)))
			.orderBy(asc(client.name), asc(agreement.id))
			.all()
		const broughts = broughtIn(db)
		const renewals = db.select({ id: agreement.id, renews: agreement.renews }).from(agreement).all()
		const endings = rows.flatMap(({ row, client: { name } }): Endings['endings'] => {
			const last = lastTerms(db, row)
			if (last === undefined || row.holdsUntil === null) return []
			const renewedBy = renewals.find(({ renews }) => renews === row.id)?.id ?? null
			const next = renewed(last, renewalOf(row.id))
			const margins = marginsOf(row.clientId, next, broughts)
			return [{ id: row.id, client: row.clientId, name, to: row.holdsUntil, next, margins, renewedBy }]
		})
		return { year, today: dayOf(at, house.timeZone), currency: house.currency, endings }
	})
}

export type Renewing = {
	readonly agreement: Id<'agreement'>
	readonly renewal: Renewal
	readonly signBy: Day
	readonly once: Id<'once'>
}
export type RenewedAs =
	| IssuedAs
	| { readonly ok: false; readonly why: 'renewed before' | 'nothing to end' }
	| { readonly ok: false; readonly why: 'not ready'; readonly problems: readonly Problem[] }
	| Denied

/** Undoes the beginning of one that could not be issued. */
class NotIssued extends Error {
	constructor(readonly said: RenewedAs) {
		super('not issued')
	}
}

/** The agreement of the year after, begun and issued at once: both, or neither; each agreement is renewed once. */
export async function renewAgreement(
	viewer: Viewer,
	{ agreement: id, renewal, signBy, once }: Renewing,
	stamp: Stamp,
): Promise<RenewedAs> {
	try {
		return write((tx): RenewedAs => {
			const found = findAgreement(tx, viewer, 'change agreements', id, stamp)
			if (!found.ok) return found
			const last = lastTerms(tx, found.row)
			if (last === undefined) return { ok: false, why: 'nothing to end' }
			if (tx.select({ id: agreement.id }).from(agreement).where(eq(agreement.renews, id)).all().length > 0)
				return { ok: false, why: 'renewed before' }
			const { terms } = renewed(last, renewal)
			const begun = beginAgreementIn(tx, viewer, { client: found.row.clientId, terms, renews: id }, stamp)
			if (!begun.ok) return begun
			const issued = issueIn(tx, viewer, { agreement: begun.id, version: 1, signBy, once }, stamp)
			if (!issued.ok) throw new NotIssued(issued)
			return issued
		})
	} catch (error) {
		if (error instanceof NotIssued) return error.said
		throw error
	}
}

/** With whom each agreement is, for whoever may renew them. */
export async function agreementNames(viewer: Viewer): Promise<ReadonlyMap<string, string> | undefined> {
	if (denied(viewer, 'change agreements', null) !== null) return undefined
	return read((db) => {
		const rows = db
			.select({ id: agreement.id, name: client.name })
			.from(agreement)
			.innerJoin(client, eq(client.id, agreement.clientId))
			.all()
		return new Map<string, string>(rows.map(({ id, name }) => [id, name]))
	})
}
