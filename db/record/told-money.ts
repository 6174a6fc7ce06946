import { and, eq, inArray } from 'drizzle-orm'
import type { RecordedAct } from '@/lib/record/acts'
import type { PersonId } from '@/lib/units/id'
import type { Reading } from '../open'
import { creditNote, entry, invoice } from '../schema'
import { says, type Telling } from './says'

const written: RecordedAct = 'invoice written'
const credited: RecordedAct = 'invoice credited'
const paid: RecordedAct = 'payment recorded'
const corrected: RecordedAct = 'account corrected'
export const moneyActs: readonly RecordedAct[] = [written, credited, paid, corrected]

const actorOf = (by: PersonId | null) => (by === null ? 'system' : `staff ${by}`)

/** Each with its one entry: one without, or with two, is told of by no line. */
function invoices(db: Reading): Telling[] {
	return db
		.select({ row: invoice, entry })
		.from(invoice)
		.leftJoin(entry, and(eq(entry.invoice, invoice.number), eq(entry.is, 'invoice')))
		.all()
		.map(({ row: { number, bill, on, dueOn: due, totalCents: cents, words: sealed, at, by }, entry: of }) => {
			const isLike = of !== null && of.cents === cents && of.on === on
			const facts = { bill, cents, due, entry: isLike ? of.id : null, on }
			return [
				says({ act: written, at, actor: actorOf(by), object: `invoice ${number}`, facts, sealed }),
				`the invoice ${number}`,
			]
		})
}

function credits(db: Reading): Telling[] {
	return db
		.select({ row: creditNote, entry })
		.from(creditNote)
		.leftJoin(entry, eq(entry.creditNote, creditNote.number))
		.all()
		.map(({ row: { number, invoice: of, on, totalCents: cents, words: sealed, at, by }, entry: line }) => {
			const isLike = line !== null && line.cents === cents && line.on === on && line.invoice === of
			const facts = { cents, entry: isLike ? line.id : null, invoice: of, on }
			const object = `credit note ${number}`
			return [says({ act: credited, at, actor: actorOf(by), object, facts, sealed }), `the ${object}`]
		})
}

function entries(db: Reading): Telling[] {
	return db
		.select()
		.from(entry)
		.where(inArray(entry.is, ['payment', 'refund', 'write-off', 'counter-entry']))
		.all()
		.map(({ id, is, on, cents, invoice: of, means, undoes, words: sealed, at, by }) => {
			const act = is === 'payment' || is === 'refund' ? paid : corrected
			const facts = { cents, invoice: of, is, means, on, undoes }
			return [says({ act, at, actor: actorOf(by), object: `entry ${id}`, facts, sealed }), `the entry ${id}`]
		})
}

export const moneyTold = (db: Reading): Telling[] => [...invoices(db), ...credits(db), ...entries(db)]
