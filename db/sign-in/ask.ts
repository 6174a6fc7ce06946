import { eq } from 'drizzle-orm'
import type { Hash } from '@/lib/record/hash'
import { write } from '../open'
import { enqueue } from '../outbox/enqueue'
import { person } from '../schema'
import type { Stamp } from '../stamp'

export type Asked = { readonly address: string; readonly askHash: Hash; readonly to: string }

/**
 * Someone asked for a link. The same rows are read and the same row is written whether or not the address is known
 * here, so that neither the answer nor its time tells.
 */
export async function askForLink({ address, askHash, to }: Asked, stamp: Stamp): Promise<void> {
	write((tx) => {
		const [found] = tx.select({ id: person.id }).from(person).where(eq(person.email, address)).all()
		enqueue(tx, stamp, { message: 'sign-in link', person: found?.id ?? null, facts: { askHash, to } })
	})
}

/** The address behind the handle of a mailed link; undefined for one that stands for nobody. */
export async function addressOfHandle(handle: string): Promise<string | undefined> {
	return write((tx) => tx.select({ email: person.email }).from(person).where(eq(person.handle, handle)).all())[0]?.email
}
