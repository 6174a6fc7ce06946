import { canonical, type Json } from '@/lib/record/canonical'
import type { PersonId } from '@/lib/units/id'
import type { Tx } from '../open'
import { type Message, outbox } from '../schema'
import type { Stamp } from '../stamp'

export type Mail = {
	readonly message: Message
	readonly person: PersonId | null
	readonly facts: { readonly [key: string]: Json }
}

/** A mail to be sent, in the transaction of what it reports: both stand, or neither. */
export function enqueue(tx: Tx, stamp: Stamp, { message, person, facts }: Mail): void {
	const id = stamp.id<'mail'>()
	const row = {
		id,
		message,
		personId: person,
		facts: canonical(facts),
		createdAt: stamp.at,
		notBefore: stamp.at,
		tries: 0,
	}
	tx.insert(outbox).values(row).run()
}
