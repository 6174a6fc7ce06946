import { and, asc, desc, eq, inArray } from 'drizzle-orm'
import type { Approval, Since } from '@/lib/money/bills/of-approval'
import { askedOf } from '@/lib/money/bills/quoted-season'
import type { Telling } from '@/lib/money/invoice/lines'
import { take } from '@/lib/proposal/answer'
import { pricesOf } from '@/lib/proposal/picked/palettes'
import { summedRows } from '@/lib/proposal/picked/summed-rows'
import { type Season, seasonName } from '@/lib/season/season'
import { cents } from '@/lib/units/cents'
import { type Day, dayOf } from '@/lib/units/day'
import type { ClientId, ProposalId } from '@/lib/units/id'
import type { Reading } from '../../open'
import { offerIn } from '../../proposals/documents'
import { answerTo } from '../../proposals/read-offer'
import { event, proposal, revision, season, visit } from '../../schema'
import { timeZoneOf } from '../../studio/time-zone'

/** An approval that stands, and what its invoices say beside its bills. */
export type Approved = {
	readonly approval: Approval
	readonly season: Season
	readonly telling: Omit<Telling, 'deposit'>
	readonly currency: string
	readonly purchaseOrder: string
	readonly exemptCertificate: string | null
}

type Row = {
	readonly row: typeof proposal.$inferSelect
	readonly season: Season
	readonly to: typeof revision.$inferSelect
}

/** The day on which the record says that it was done; undefined where it does not. */
function doneOn(db: Reading, id: ProposalId, act: 'proposal installed' | 'proposal cancelled'): Day | undefined {
	const line = and(eq(event.object, `proposal ${id}`), eq(event.act, act))
	const [found] = db.select({ at: event.at }).from(event).where(line).orderBy(desc(event.seq)).limit(1).all()
	return found && dayOf(found.at, timeZoneOf(db))
}

/** The day of the last install that was written down, where there is one. */
function installedOn(db: Reading, id: ProposalId): Day | undefined {
	const made = and(eq(visit.proposalId, id), eq(visit.kind, 'install'), eq(visit.state, 'done'))
	const [last] = db.select({ day: visit.day }).from(visit).where(made).orderBy(desc(visit.day)).limit(1).all()
	return last?.day ?? doneOn(db, id, 'proposal installed')
}

/** @throws when the record does not say when */
function sinceOf(db: Reading, { id, state, remainsCents }: Row['row']): Since {
	if (state === 'approved') return { is: 'approved' }
	const on = state === 'installed' ? installedOn(db, id) : doneOn(db, id, 'proposal cancelled')
	if (on === undefined) throw new Error(`approved: no line says when ${id} was ${state}`)
	if (state === 'installed') return { is: 'installed', on }
	return { is: 'cancelled', on, remainsCents: remainsCents ?? cents(0) }
}

function approvedOf(db: Reading, { row, season: when, to }: Row): Approved[] {
	const offer = offerIn(db, to)
	const given = answerTo(db, to)
	if (offer === undefined || given?.option == null || given.kind !== 'approval') return []
	const leftOut = offer.containers.filter(({ id }) => given.leftOut.includes(id)).map(({ id }) => id)
	const taken = take(offer, { ...given, option: given.option, leftOut })
	if (!taken.ok) throw new Error(`approved: the answer to ${row.id} takes what was not offered: ${taken.why}`)
	const { currency, exemptCertificate } = taken.quote
	const quote = askedOf(taken.quote, pricesOf(taken))
	const apart = quote.lines.filter(({ bill }) => bill === 'apart')
	const approvedOn = dayOf(given.at, timeZoneOf(db))
	const about = seasonName(when)
	return [
		{
			approval: { proposal: row.id, revision: to.hash, approvedOn, quote, since: sinceOf(db, row) },
			season: when,
			telling: { about, rows: summedRows(apart, offer) },
			currency,
			purchaseOrder: given.words?.purchaseOrder ?? '',
			exemptCertificate,
		},
	]
}

/** Every approval of a client that stands, the earliest season first; none once their words are erased. */
export function approvedBy(db: Reading, of: ClientId): Approved[] {
	const stands = inArray(proposal.state, ['approved', 'installed', 'cancelled'])
	return db
		.select({ row: proposal, season: { quarter: season.quarter, year: season.year }, to: revision })
		.from(proposal)
		.innerJoin(season, eq(season.id, proposal.seasonId))
		.innerJoin(revision, eq(revision.hash, proposal.revisionHash))
		.where(and(eq(proposal.clientId, of), stands))
		.orderBy(asc(season.windowFrom), asc(proposal.id))
		.all()
		.flatMap((row) => approvedOf(db, row))
}
