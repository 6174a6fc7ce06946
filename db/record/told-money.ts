import { and, eq, inArray } from 'drizzle-orm'
import type { RecordedAct } from '@/lib/record/acts'
import type { Entry } from '@/lib/record/chain'
import type { PersonId } from '@/lib/units/id'
import type { Reading } from '../open'
import { creditNote, entry, invoice } from '../schema'

export const moneyActs = [
	'invoice written',
	'invoice credited',
	'payment recorded',
	'account corrected',
] as const satisfies readonly RecordedAct[]

/** What a line has to say of a piece of evidence, and what that piece is called. */
type Evidence = Pick<Entry, 'at' | 'actor' | 'object' | 'facts' | 'sealed'> & {
	readonly act: (typeof moneyActs)[number]
	readonly what: string
}

const actorOf = (by: PersonId | null) => (by === null ? 'system' : `staff ${by}`)

/** Each with its one entry: one without, or with two, is told of by no line. */
function invoices(db: Reading): Evidence[] {
	return db
		.select({ row: invoice, entry })
		.from(invoice)
		.leftJoin(entry, and(eq(entry.invoice, invoice.number), eq(entry.is, 'invoice')))
		.all()
		.map(({ row: { number, bill, on, dueOn: due, totalCents: cents, words: sealed, at, by }, entry: of }) => {
			const isLike = of !== null && of.cents === cents && of.on === on
			const facts = { bill, cents, due, entry: isLike ? of.id : null, on }
			const object = `invoice ${number}`
			return { act: 'invoice written', at, actor: actorOf(by), object, facts, sealed, what: `the ${object}` }
		})
}

function credits(db: Reading): Evidence[] {
	return db
		.select({ row: creditNote, entry })
		.from(creditNote)
		.leftJoin(entry, eq(entry.creditNote, creditNote.number))
		.all()
		.map(({ row: { number, invoice: of, on, totalCents: cents, words: sealed, at, by }, entry: line }) => {
			const isLike = line !== null && line.cents === cents && line.on === on && line.invoice === of
			const facts = { cents, entry: isLike ? line.id : null, invoice: of, on }
			const object = `credit note ${number}`
			return { act: 'invoice credited', at, actor: actorOf(by), object, facts, sealed, what: `the ${object}` }
		})
}

function entries(db: Reading): Evidence[] {
	return db
		.select()
		.from(entry)
		.where(inArray(entry.is, ['payment', 'refund', 'write-off', 'counter-entry']))
		.all()
		.map(({ id, is, on, cents, invoice: of, means, undoes, words: sealed, at, by }) => {
			const act = is === 'payment' || is === 'refund' ? 'payment recorded' : 'account corrected'
			const object = `entry ${id}`
			const facts = { cents, invoice: of, is, means, on, undoes }
			return { act, at, actor: actorOf(by), object, facts, sealed, what: `the ${object}` }
		})
}

export const moneyEvidence = (db: Reading): Evidence[] => [...invoices(db), ...credits(db), ...entries(db)]
