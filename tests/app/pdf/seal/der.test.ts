import fc from 'fast-check'
import forge from 'node-forge'
import { describe, expect, test } from 'vitest'
import { der, inOrder, oid, tags } from '@/app/server/pdf/seal/der'

const hex = (bytes: Buffer) => bytes.toString('hex')

// ITU-T X.690: the examples of sections 8.1.3 (length) and 8.19.5 (object identifier).
describe('DER', () => {
	test.each([
		{ size: 38, length: '26' },
		{ size: 127, length: '7f' },
		{ size: 201, length: '81c9' },
		{ size: 256, length: '820100' },
	])('a length of $size is $length', ({ size, length }) => {
		expect(hex(der(tags.octets, Buffer.alloc(size))).slice(2, 2 + length.length)).toBe(length)
	})

	test('{joint-iso-itu-t 100 3} is 8134 03', () => {
		expect(hex(oid('2.100.3'))).toBe('0603813403')
	})

	test('the names of things are written as another library writes them', () => {
		const ids = ['1.2.840.113549.1.7.2', '1.2.840.113549.1.9.16.2.47', '2.16.840.1.101.3.4.2.1', '2.5.4.3']
		for (const id of ids) {
			const other = forge.asn1.create(
				forge.asn1.Class.UNIVERSAL,
				forge.asn1.Type.OID,
				false,
				forge.asn1.oidToDer(id).getBytes(),
			)
			expect(oid(id).toString('latin1')).toBe(forge.asn1.toDer(other).getBytes())
		}
	})

	test('what was put together is read back by another library', () => {
		fc.assert(
			fc.property(fc.array(fc.uint8Array({ maxLength: 400 }), { maxLength: 6 }), (all) => {
				const bytes = der(tags.sequence, ...all.map((each) => der(tags.octets, each)))
				const { value } = forge.asn1.fromDer(bytes.toString('latin1'))
				const read = typeof value === 'string' ? [] : value.map((each) => each.value)
				expect(read).toEqual(all.map((each) => Buffer.from(each).toString('latin1')))
			}),
		)
	})

	test('a set is in the order of its values’ bytes', () => {
		const values = ['0601', '0401', '040100', '0400'].map((text) => Buffer.from(text, 'hex'))
		expect(inOrder(values).map(hex)).toEqual(['0400', '0401', '040100', '0601'])
	})
})
