import { and, asc, eq, inArray, isNull } from 'drizzle-orm'
import type { Viewer } from '@/lib/access/viewer'
import { type LateList, lateList } from '@/lib/money/late/late-list'
import { type Account, accountOf } from '@/lib/money/ledger/account'
import { type Day, dayOf, type Moment } from '@/lib/units/day'
import type { ClientId } from '@/lib/units/id'
import { type Reading, read } from '../open'
import { client, invoice, invoiceAsked, studio } from '../schema'
import type { Stamp } from '../stamp'
import { denied } from '../viewer'
import { billsFrom } from './bills/begun'
import { ledgersOf } from './ledger'
import { type AccountBill, accountBills } from './read-account'

export type MoneyPage = {
	readonly today: Day
	readonly timeZone: string
	readonly currency: string
	/** How it is paid is said, and since when bills go out by themselves. */
	readonly hasPayWords: boolean
	readonly since: Day | null
	readonly late: LateList
	readonly clients: readonly {
		readonly id: ClientId
		readonly name: string
		readonly account: Account
		readonly bills: readonly AccountBill[]
		/** The last time that a late invoice of theirs was asked for again. */
		readonly remindedAt: Moment | null
	}[]
}

type House = typeof studio.$inferSelect

/** When each client was last reminded of what is late. */
function lastReminded(db: Reading, account: Account): Moment | null {
	const numbers = account.invoices.filter(({ openCents }) => openCents > 0).map(({ number }) => number)
	const rows = db.select().from(invoiceAsked).where(inArray(invoiceAsked.number, numbers)).all()
	return (
		rows
			.flatMap(({ remindedAt }) => remindedAt ?? [])
			.toSorted()
			.at(-1) ?? null
	)
}

function pageOf(db: Reading, house: House, today: Day): MoneyPage {
	const all = db.select().from(client).where(isNull(client.archivedAt)).orderBy(asc(client.name)).all()
	const ledgers = ledgersOf(
		db,
		all.map(({ id }) => id),
	)
	const clients = all.map((each) => {
		const account = accountOf(ledgers.get(each.id) ?? [])
		const bills = accountBills(db, { ok: true, client: each, studio: house, today })
		return { id: each.id, name: each.name, account, bills, remindedAt: lastReminded(db, account) }
	})
	return {
		...{
			today,
			timeZone: house.timeZone,
			currency: house.currency,
			hasPayWords: house.payWords !== '',
			since: billsFrom(db),
			clients,
		},
		late: lateList(
			clients.map(({ id, account }) => ({ client: id, account })),
			today,
		),
	}
}

/** Who owes what and since when, and what is to be asked for next: all clients at once. */
export async function readMoney(viewer: Viewer, { at }: Pick<Stamp, 'at'>): Promise<MoneyPage | undefined> {
	if (denied(viewer, 'see accounts', null) !== null) return undefined
	return read((db) => {
		const [house] = db.select().from(studio).all()
		return house && pageOf(db, house, dayOf(at, house.timeZone))
	})
}

/** How many clients are past their day and by how much, for a line on another page. */
export async function readLate(
	viewer: Viewer,
	{ at }: Pick<Stamp, 'at'>,
): Promise<{ readonly late: LateList; readonly currency: string } | undefined> {
	if (denied(viewer, 'see accounts', null) !== null) return undefined
	return read((db) => {
		const [house] = db.select().from(studio).all()
		if (house === undefined) return undefined
		const ids = db
			.selectDistinct({ id: invoice.clientId })
			.from(invoice)
			.innerJoin(client, and(eq(client.id, invoice.clientId), isNull(client.archivedAt)))
			.all()
		const ledgers = ledgersOf(
			db,
			ids.map(({ id }) => id),
		)
		const accounts = [...ledgers].map(([id, ledger]) => ({ client: id, account: accountOf(ledger) }))
		return { late: lateList(accounts, dayOf(at, house.timeZone)), currency: house.currency }
	})
}
