import type { Stamp } from '@/db/stamp'
import { sha256 } from '@/lib/record/hash'
import type { Moment } from '@/lib/units/day'
import { id } from '@/lib/units/id'

const bytesOf = (...parts: string[]) => Buffer.from(sha256(parts.join('\n')), 'hex')

/** UUID v7 (RFC 9562, section 5.7): 48 bits of time, then a counter of 30 bits round version and variant, then `tail`. */
function uuid(at: Moment, counter: number, tail: Uint8Array): string {
	const value =
		(BigInt(Date.parse(at)) << 80n) |
		(0x7n << 76n) |
		(BigInt(counter >>> 18) << 64n) |
		(0b10n << 62n) |
		(BigInt(counter & 0x3ffff) << 44n) |
		(BigInt(`0x${Buffer.from(tail).toString('hex')}`) & 0xfffffffffffn)
	const digits = value.toString(16).padStart(32, '0')
	return digits.replace(/^(.{8})(.{4})(.{4})(.{4})(.{12})$/, '$1-$2-$3-$4-$5')
}

/** Ids and salts that follow from `seedText` and from how many were asked for before: the same play, the same rows. */
export function stampsFrom(seedText: string): (at: Moment) => Stamp {
	let counter = 0
	const next = (of: string) => {
		counter += 1
		return { counter, bytes: bytesOf(seedText, of, String(counter)) }
	}
	return (at) => ({
		at,
		id: <Of extends string>() => {
			const { counter: n, bytes } = next('id')
			return id<Of>(uuid(at, n, bytes.subarray(0, 6)))
		},
		salt: () => next('salt').bytes.subarray(0, 16),
	})
}
