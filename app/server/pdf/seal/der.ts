/** Lengths of DER (ITU-T X.690, section 8.1.3): short up to 127, else the bytes of the number behind their count. */
function lengthOf(size: number): Buffer {
	if (size < 0x80) return Buffer.from([size])
	const hex = size.toString(16)
	const bytes = Buffer.from(hex.length % 2 === 0 ? hex : `0${hex}`, 'hex')
	return Buffer.concat([Buffer.from([0x80 | bytes.length]), bytes])
}

/** One value of DER: its tag, its length, and the values or bytes in it. */
export function der(tag: number, ...parts: readonly Uint8Array[]): Buffer {
	const body = Buffer.concat(parts)
	return Buffer.concat([Buffer.from([tag]), lengthOf(body.length), body])
}

export const tags = { integer: 0x02, octets: 0x04, nothing: 0x05, oid: 0x06, sequence: 0x30, set: 0x31 } as const

/** "[n]" around or in the place of a value (context-specific, constructed). */
export const context = (n: number) => 0xa0 | n

/** Values of a set in the order that DER asks for (X.690, section 11.6): as octet strings, ascending. */
export const inOrder = (values: readonly Buffer[]): Buffer[] => values.toSorted(Buffer.compare)

const base128 = (arc: number): number[] =>
	arc < 0x80 ? [arc] : [...base128(arc >> 7).map((n) => n | 0x80), arc & 0x7f]

/** An object identifier such as "1.2.840.113549.1.7.2" (X.690, section 8.19). */
export function oid(text: string): Buffer {
	const [first = 0, second = 0, ...rest] = text.split('.').map(Number)
	return der(tags.oid, Buffer.from([first * 40 + second, ...rest].flatMap(base128)))
}
