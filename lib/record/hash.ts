import { createHash } from 'node:crypto'
import { canonical, type Json } from './canonical'
import { type Hash, isHash } from './is-hash'

export { type Hash, isHash }

/** @throws when `text` is not a SHA-256 in lower-case hexadecimal */
export function hash(text: string): Hash {
	if (!isHash(text)) throw new Error(`hash: "${text.slice(0, 70)}" is not a SHA-256`)
	return text
}

export function sha256(...parts: readonly (string | Uint8Array)[]): Hash {
	const digest = createHash('sha256')
	for (const part of parts) digest.update(part)
	return hash(digest.digest('hex'))
}

/** What a revision or an event is known by. */
export const hashOf = (value: Json): Hash => sha256(canonical(value))

const saltBytes = 16

/**
 * Hash of words that may have to be erased: without the salt, which goes with them, it says nothing of them.
 * @throws when `salt` is not 16 bytes
 */
export function sealedHash(salt: Uint8Array, body: string): Hash {
	if (salt.length !== saltBytes) throw new Error(`sealedHash: a salt has ${saltBytes} bytes, not ${salt.length}`)
	return sha256(salt, body)
}
