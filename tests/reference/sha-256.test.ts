import { describe, expect, test } from 'vitest'
import { sha256 } from '@/lib/record/hash'

const bytes = (count: number, value: number) => new Uint8Array(count).fill(value)

// FIPS 180-4, Secure Hash Standard: the examples of NIST, and NIST's additional vectors of zero bytes.
const vectors: { name: string; message: string | Uint8Array; digest: string }[] = [
	{ name: 'nothing', message: '', digest: 'e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855' },
	{ name: '“abc”', message: 'abc', digest: 'ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad' },
	{
		name: '448 bits',
		message: 'abcdbcdecdefdefgefghfghighijhijkijkljklmklmnlmnomnopnopq',
		digest: '248d6a61d20638b8e5c026930c3e6039a33ce45964ff2167f6ecedd419db06c1',
	},
	{
		name: 'a million times “a”',
		message: 'a'.repeat(1_000_000),
		digest: 'cdc76e5c9914fb9281a1c7e284d73e67f1809a48a497200e046d39ccc7112cd0',
	},
	{
		name: 'the byte bd',
		message: bytes(1, 0xbd),
		digest: '68325720aabd7c82f30f554b313d0570c95accbb7dc4b5aae11204c08ffe732b',
	},
	{
		name: '55 zero bytes',
		message: bytes(55, 0),
		digest: '02779466cdec163811d078815c633f21901413081449002f24aa3e80f0b88ef7',
	},
	{
		name: '57 zero bytes',
		message: bytes(57, 0),
		digest: '65a16cb7861335d5ace3c60718b5052e44660726da4cd13bb745381b235a1785',
	},
	{
		name: '64 zero bytes',
		message: bytes(64, 0),
		digest: 'f5a5fd42d16a20302798ef6ed309979b43003d2320d9f0e8ea9831a92759fb4b',
	},
]

describe('FIPS 180-4', () => {
	test.each(vectors)('$name', ({ message, digest }) => {
		expect(sha256(message)).toBe(digest)
	})

	test.each(vectors)('$name, in two parts', ({ message, digest }) => {
		const half = Math.floor(message.length / 2)
		expect(sha256(message.slice(0, half), message.slice(half))).toBe(digest)
	})
})
