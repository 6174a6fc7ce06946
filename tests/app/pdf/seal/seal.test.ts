import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import fc from 'fast-check'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { agreementPdf } from '@/app/server/pdf/agreement'
import type { SealKey } from '@/app/server/pdf/seal/cms'
import { sealKey } from '@/app/server/pdf/seal/seal-key'
import { sealPdf } from '@/app/server/pdf/seal/seal-pdf'
import { sha256 } from '@/lib/record/hash'
import { at, paper } from '../sample'
import { bare, pagesOf } from '../text'
import { pdfsig, qpdf } from './judges'

let folder: string
let key: SealKey
let plain: Buffer
let sealed: Buffer

beforeAll(async () => {
	folder = mkdtempSync(join(tmpdir(), 'doorsill-seal-'))
	key = sealKey(folder, { password: undefined, file: undefined }, new Date(at(0)))
	plain = await agreementPdf(paper())
	sealed = await sealPdf(plain, key, at(8))
})
afterAll(() => rmSync(folder, { recursive: true, force: true }))

/** Where the signed bytes lie: [from, count, from, count] (ISO 32000-1, section 12.8.1). */
function ranges(): [number, number][] {
	const [, ...found] = /\/ByteRange \[(\d+) (\d+) (\d+) (\d+)\]/.exec(sealed.toString('latin1')) ?? []
	const [from = 0, count = 0, then = 0, rest = 0] = found.map(Number)
	return [
		[from, count],
		[then, rest],
	]
}

// Judges: poppler's pdfsig (NSS) and qpdf. The rules: ISO 32000-1, section 12.8; ETSI EN 319 142-1.
describe('a sealed file', () => {
	test('is whole in the eyes of a reader, over all of its bytes', () => {
		const says = pdfsig(sealed)
		expect(says).toContain('Signature Validation: Signature is Valid.')
		expect(says).toContain('Total document signed')
		expect(says).toContain('Signature Type: ETSI.CAdES.detached')
		expect(says).toContain('Signing Hash Algorithm: SHA-256')
		expect(says).toContain('Studio seal, made by Doorsill')
	})

	test('its bytes are well ordered', () => {
		expect(qpdf(plain)).toMatchObject({ status: 0 })
		const { status, says } = qpdf(sealed)
		expect(says).not.toMatch(/WARNING/i)
		expect(status).toBe(0)
	})

	test('all but the signature’s own place is signed, up to the last byte', () => {
		const [first, second] = ranges()
		expect(first?.[0]).toBe(0)
		const gap = sealed.subarray(first?.[1], second?.[0]).toString('latin1')
		expect(gap).toMatch(/^<[0-9a-f]+>$/)
		expect((second?.[0] ?? 0) + (second?.[1] ?? 0)).toBe(sealed.length)
	})

	test('is the same bytes when it is sealed once more, and others at another moment', async () => {
		expect((await sealPdf(plain, key, at(8))).equals(sealed)).toBe(true)
		expect((await sealPdf(plain, key, at(9))).equals(sealed)).toBe(false)
	})

	test('reads as it did before', async () => {
		expect((await pagesOf(sealed)).map(bare)).toEqual((await pagesOf(plain)).map(bare))
	})
})

describe('one byte that is another one', () => {
	const hash = () => sha256(sealed)
	const flipped = (place: number, bit: number) => {
		const bytes = Buffer.from(sealed)
		bytes[place] = (bytes[place] ?? 0) ^ (1 << bit)
		return bytes
	}
	const isFound = (bytes: Buffer) => {
		const says = pdfsig(bytes)
		return !(says.includes('Signature is Valid.') && says.includes('Total document signed'))
	}

	test('within what it says is told as a digest that does not match', () => {
		const place = sealed.indexOf('stream') + 40
		expect(pdfsig(flipped(place, 0))).toContain('Digest Mismatch')
	})

	test('anywhere in the signed ranges is found by the reader and by the hash of the file', () => {
		const [first, second] = ranges()
		const places = fc.oneof(
			fc.nat((first?.[1] ?? 1) - 1),
			fc.nat((second?.[1] ?? 1) - 1).map((n) => n + (second?.[0] ?? 0)),
		)
		fc.assert(
			fc.property(places, fc.nat(7), (place, bit) => {
				const bytes = flipped(place, bit)
				expect(isFound(bytes)).toBe(true)
				expect(sha256(bytes)).not.toBe(hash())
			}),
			{ numRuns: 60 },
		)
	})

	test('bytes put behind the end are found too', () => {
		expect(isFound(Buffer.concat([sealed, Buffer.from('\n% more\n')]))).toBe(true)
	})

	test('a file that was never sealed is not taken for one', () => {
		expect(pdfsig(plain)).not.toContain('Signature is Valid.')
	})
})
