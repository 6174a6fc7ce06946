import type { PersonId } from '@/lib/units/id'
import type { Tx } from '../open'
import { person } from '../schema'
import type { Stamp } from '../stamp'

type Someone = { readonly id: PersonId; readonly name: string; readonly address: string }

/** Somebody who was not known before, with a handle that stands for them in links that are mailed. */
export function insertPerson(tx: Tx, stamp: Stamp, { id, name, address }: Someone): void {
	const handle = Buffer.from(stamp.salt()).toString('base64url')
	tx.insert(person).values({ id, name, email: address, handle, createdAt: stamp.at }).run()
}
