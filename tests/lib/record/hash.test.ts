import { createHash } from 'node:crypto'
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { hash, hashOf, isHash, sealedHash, sha256 } from '@/lib/record/hash'

const abc = 'ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad'

describe('a hash', () => {
	test('is sixty-four small hexadecimal digits', () => {
		expect(hash(abc)).toBe(abc)
	})

	test.each([
		{ name: 'written large', text: abc.toUpperCase() },
		{ name: 'a digit short', text: abc.slice(1) },
		{ name: 'a digit long', text: `${abc}0` },
		{ name: 'not hexadecimal', text: abc.replace('b', 'g') },
		{ name: 'a line end after it', text: `${abc}\n` },
		{ name: 'nothing', text: '' },
	])('is not $name', ({ text }) => {
		expect(isHash(text)).toBe(false)
		expect(() => hash(text)).toThrow('is not a SHA-256')
	})

	test('of a value is that of its canonical text', () => {
		expect(hashOf({ b: 2, a: 'ü' })).toBe(sha256('{"a":"ü","b":2}'))
		expect(hashOf('abc')).toBe(sha256('"abc"'))
	})
})

const salts = fc.uint8Array({ minLength: 16, maxLength: 16 })
const words = fc.string({ unit: 'grapheme', maxLength: 60 })

describe('the hash of sealed words', () => {
	const salt = Uint8Array.from({ length: 16 }, (_, n) => n * 11)

	test('is over salt and words together', () => {
		const judge = createHash('sha256')
			.update(Buffer.concat([salt, Buffer.from('Dear Ada, …')]))
			.digest('hex')
		expect(sealedHash(salt, 'Dear Ada, …')).toBe(judge)
	})

	test.each([0, 15, 17, 32])('refuses a salt of %i bytes', (length) => {
		expect(() => sealedHash(new Uint8Array(length), 'a letter')).toThrow(
			`sealedHash: a salt has 16 bytes, not ${length}`,
		)
	})

	test('is another with another salt, and with other words', () => {
		fc.assert(
			fc.property(salts, salts, words, words, (a, b, one, other) => {
				const sameSalt = Buffer.compare(a, b) === 0
				expect(sealedHash(a, one) === sealedHash(b, one)).toBe(sameSalt)
				expect(sealedHash(a, one) === sealedHash(a, other)).toBe(one === other)
				expect(sealedHash(a, one)).not.toBe(sha256(one))
			}),
		)
	})
})
