import type { Viewer } from '@/lib/access/viewer'
import type { InvoiceNumber } from '@/lib/money/invoice/number'
import type { Means } from '@/lib/money/ledger/entry'
import type { Cents } from '@/lib/units/cents'
import type { Day } from '@/lib/units/day'
import type { ClientId } from '@/lib/units/id'
import { write } from '../../open'
import { enqueue } from '../../outbox/enqueue'
import { contactsOf } from '../../proposals/recipients'
import type { Stamp } from '../../stamp'
import { enterIn, type Kept } from '../enter'

export type Payment = {
	readonly client: ClientId
	readonly on: Day
	readonly cents: Cents
	readonly means: Means
	readonly reference: string
	/** The invoice that the client named; null where none was. */
	readonly invoice: InvoiceNumber | null
	/** More than is due, and the rest is kept for them. */
	readonly keepRest: boolean
}

/** Money came: those who may approve are thanked. */
export async function recordPayment(
	viewer: Viewer,
	{ client, keepRest, ...paid }: Payment,
	stamp: Stamp,
): Promise<Kept> {
	const id = stamp.id<'entry'>()
	return write((tx): Kept => {
		const said = enterIn(tx, viewer, { client, keepRest }, () => ({ is: 'payment', id, ...paid }), stamp)
		if (!said.ok) return said
		for (const person of contactsOf(tx, client, { whoSeeMoney: true }))
			enqueue(tx, stamp, { message: 'payment received', person, facts: { entry: id } })
		return said
	})
}
