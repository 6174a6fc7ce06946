import { eq, sql } from 'drizzle-orm'
import { canonical, type Json } from '@/lib/record/canonical'
import { type Hash, sealedHash } from '@/lib/record/hash'
import type { ClientId } from '@/lib/units/id'
import { prepared, type Reading, type Tx } from '../open'
import { sealedText } from '../schema'
import type { Stamp } from '../stamp'

/** Puts words away under a hash that says nothing of them once they are erased. */
export function seal(tx: Tx, stamp: Stamp, clientId: ClientId, words: Json): Hash {
	const body = canonical(words)
	const salt = Buffer.from(stamp.salt())
	const hash = sealedHash(salt, body)
	tx.insert(sealedText).values({ hash, clientId, salt, body }).run()
	return hash
}

const sealedUnder = prepared((db) =>
	db
		.select({ body: sealedText.body })
		.from(sealedText)
		.where(eq(sealedText.hash, sql.placeholder('hash')))
		.prepare(),
)

/** The words as they are sealed, canonical JSON; undefined once they are erased. */
export function sealedBody(db: Reading, hash: Hash): string | undefined {
	return sealedUnder(db).all({ hash })[0]?.body
}

/** The words, or undefined once they are erased. The caller parses what comes back. */
export function unseal(db: Reading, hash: Hash): unknown {
	const body = sealedBody(db, hash)
	return body === undefined ? undefined : JSON.parse(body)
}
