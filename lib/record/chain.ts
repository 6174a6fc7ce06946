import type { Moment } from '../units/day'
import { canonical, type Json } from './canonical'
import { type Hash, hash, sha256 } from './hash'

/** One line of the record, chained to the one before by `prev`. */
export type Entry = {
	readonly seq: number
	readonly at: Moment
	readonly actor: string
	readonly act: string
	readonly object: string
	readonly client: string | null
	readonly facts: { readonly [key: string]: Json }
	/** Hash of the words that belong to it, which can be erased while the chain stands. */
	readonly sealed: Hash | null
	readonly prev: Hash
}

/** Before the first line. */
export const genesis: Hash = hash('0'.repeat(64))

const leaf = new Uint8Array([0])

/** SHA-256(0x00 ‖ canonical JSON): the prefix marks a leaf, as in RFC 9162 section 2.1. */
export function entryHash(entry: Entry): Hash {
	return sha256(leaf, canonical({ v: 1, ...entry }))
}

export type Kept = { readonly entry: Entry; readonly hash: Hash }
export type Break = {
	readonly seq: number
	readonly why: 'missing' | 'out of place' | 'altered' | 'not chained'
}

/** What has no canonical text, such as half of a surrogate pair, was never written by us. */
function isAltered({ entry, hash: kept }: Kept): boolean {
	try {
		return entryHash(entry) !== kept
	} catch {
		return true
	}
}

/** @returns the first line that breaks the chain, or null when it is whole. Lines come in order of `seq`, from 1. */
export function firstBreak(lines: Iterable<Kept>): Break | null {
	let prev = genesis
	let next = 1
	for (const line of lines) {
		const { entry, hash: kept } = line
		if (entry.seq > next) return { seq: next, why: 'missing' }
		if (entry.seq < next) return { seq: entry.seq, why: 'out of place' }
		if (isAltered(line)) return { seq: entry.seq, why: 'altered' }
		if (entry.prev !== prev) return { seq: entry.seq, why: 'not chained' }
		prev = kept
		next += 1
	}
	return null
}
