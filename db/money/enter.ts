import type { Viewer } from '@/lib/access/viewer'
import { type EntryRefusal, enter } from '@/lib/money/ledger/enter'
import { type Entry, entrySchema, type Ledger } from '@/lib/money/ledger/entry'
import type { Day } from '@/lib/units/day'
import type { ClientId } from '@/lib/units/id'
import type { Tx } from '../open'
import { append } from '../record/append'
import { seal } from '../record/seal'
import { entry } from '../schema'
import type { Stamp } from '../stamp'
import type { Denied } from '../viewer'
import { type FoundAccount, findAccount } from './find'
import { ledgerOf } from './ledger'

export type Kept = { readonly ok: true } | { readonly ok: false; readonly why: EntryRefusal } | Denied

type ByHand = Exclude<Entry, { is: 'invoice' | 'credit note' }>

/** The columns of an entry; what it undoes has its amount. */
function columnsOf(given: ByHand, ledger: Ledger) {
	switch (given.is) {
		case 'payment':
			return { cents: given.cents, means: given.means, invoice: given.invoice }
		case 'refund':
			return { cents: given.cents, means: given.means }
		case 'write-off':
			return { cents: given.cents, invoice: given.invoice }
		case 'counter-entry': {
			const of = ledger.find(({ id }) => id === given.of)
			if (of === undefined || !('cents' in of)) throw new Error(`enterIn: ${given.of} is not there to be undone`)
			return { cents: of.cents, undoes: given.of }
		}
		default:
			return given satisfies never
	}
}

const typedIn = (given: ByHand) =>
	'reference' in given ? (given.reference === '' ? null : { reference: given.reference }) : { reason: given.reason }

function keep(tx: Tx, stamp: Stamp, viewer: Viewer, { client }: FoundAccount, given: ByHand, ledger: Ledger): void {
	const columns = columnsOf(given, ledger)
	const typed = typedIn(given)
	const words = typed === null ? null : seal(tx, stamp, client.id, typed)
	const { id, is, on } = given
	const by = viewer.is === 'staff' ? viewer.person : null
	tx.insert(entry)
		.values({ id, is, on, ...columns, words, clientId: client.id, at: stamp.at, by })
		.run()
	const {
		cents,
		invoice = null,
		means = null,
		undoes = null,
	} = { invoice: null, means: null, undoes: null, ...columns }
	append(tx, stamp, viewer, {
		act: is === 'payment' || is === 'refund' ? 'payment recorded' : 'account corrected',
		object: `entry ${id}`,
		client: client.id,
		facts: { cents, invoice, is, means, on, undoes },
		sealed: words,
	})
}

export type Given = { readonly client: ClientId; readonly keepRest?: boolean }

/** Writes an entry at the end of a client's account, if that may be: `make` makes it, on today where it has no day of its own. */
export function enterIn(
	tx: Tx,
	viewer: Viewer,
	{ client: of, keepRest = false }: Given,
	make: (today: Day) => unknown,
	stamp: Stamp,
): Kept {
	const found = findAccount(tx, viewer, 'change accounts', of, stamp)
	if (!found.ok) return found
	const given = entrySchema.parse(make(found.today))
	if (given.is === 'invoice' || given.is === 'credit note') throw new Error(`enterIn: ${given.is} is not typed`)
	const ledger = ledgerOf(tx, of)
	const said = enter(ledger, given, { today: found.today, keepRest })
	if (!said.ok) return said
	keep(tx, stamp, viewer, found, given, ledger)
	return { ok: true }
}
