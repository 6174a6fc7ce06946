import { and, asc, eq, gte, isNull, lte, or, sql } from 'drizzle-orm'
import type { Viewer } from '@/lib/access/viewer'
import { standingOf } from '@/lib/agreement/standing'
import type { AgreementList } from '@/lib/agreement/studio/shown'
import { type Day, dayOf } from '@/lib/units/day'
import { type Reading, read } from '../../open'
import { agreement, client, studio } from '../../schema'
import type { Stamp } from '../../stamp'
import { denied } from '../../viewer'

/** What holds on a day of the year; one that is being written belongs to every year. */
const inYear = (year: number) =>
	or(
		isNull(agreement.from),
		and(lte(agreement.from, sql`${`${year}-12-31`}`), gte(agreement.to, sql`${`${year}-01-01`}`)),
	)

function yearsIn(db: Reading, ...also: readonly number[]): number[] {
	const days = db.select({ from: agreement.from, to: agreement.to }).from(agreement).all()
	const years = days.flatMap(({ from, to }) =>
		[from, to].flatMap((day) => (day === null ? [] : [Number(day.slice(0, 4))])),
	)
	return [...new Set([...years, ...also])].toSorted((a, b) => b - a)
}

const waiting = (today: Day) =>
	and(eq(agreement.state, 'to be signed'), gte(agreement.to, today), isNull(client.archivedAt))

/**
 * Every agreement of a year, those to be signed soonest first; without a year the one that it is today. Whatever waits
 * for a signature stands on the present year's list: in its last weeks that is most of the next one.
 */
export async function listAgreements(
	viewer: Viewer,
	asked: number | undefined,
	{ at }: Pick<Stamp, 'at'>,
): Promise<AgreementList | undefined> {
	if (denied(viewer, 'see agreements', null) !== null) return undefined
	return read((db) => {
		const [house] = db.select().from(studio).all()
		if (house === undefined) return undefined
		const { timeZone, currency } = house
		const today = dayOf(at, timeZone)
		const thisYear = Number(today.slice(0, 4))
		const year = asked ?? thisYear
		const listed = year === thisYear ? or(inYear(year), waiting(today)) : inYear(year)
		const rows = db
			.select({ row: agreement, client })
			.from(agreement)
			.innerJoin(client, eq(client.id, agreement.clientId))
			.where(and(listed, isNull(client.archivedAt)))
			.orderBy(asc(agreement.signBy), asc(client.name), asc(agreement.id))
			.all()
		return {
			...{ today, year, timeZone, currency, years: yearsIn(db, year, thisYear) },
			rows: rows.map(({ row, client: { id, name } }) => ({
				...row,
				...{ client: id, name, state: standingOf(row, today) },
			})),
		}
	})
}

/** Those that wait for a signature today, the soonest to be signed first. */
export const waitingIn = (db: Reading, today: Day) =>
	db
		.select({ id: agreement.id, remindedAt: agreement.remindedAt })
		.from(agreement)
		.innerJoin(client, eq(client.id, agreement.clientId))
		.where(waiting(today))
		.orderBy(asc(agreement.signBy), asc(agreement.id))
		.all()

/** How many agreements wait for a client's signature. */
export async function agreementsToSign(viewer: Viewer, { at }: Pick<Stamp, 'at'>): Promise<number> {
	if (denied(viewer, 'see agreements', null) !== null) return 0
	return read((db) => {
		const [house] = db.select().from(studio).all()
		return house === undefined ? 0 : waitingIn(db, dayOf(at, house.timeZone)).length
	})
}
