import { X509Certificate } from 'node:crypto'
import { chmodSync, existsSync, mkdtempSync, readdirSync, readFileSync, rmSync, statSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { isSealThere, sealKey } from '@/app/server/pdf/seal/seal-key'
import { readEnv } from '@/app/server/start/env'

const now = new Date('2026-11-20T15:00:00Z')
const nothing = { password: undefined, file: undefined }
const named = { password: 'geraniums in a row', file: undefined }

let all: string
beforeAll(() => {
	all = mkdtempSync(join(tmpdir(), 'doorsill-key-'))
})
afterAll(() => rmSync(all, { recursive: true, force: true }))

const folder = () => mkdtempSync(join(all, 'data-'))
const p12 = (of: string) => join(of, 'seal', 'studio.p12')
const beside = (of: string) => join(of, 'seal', 'password')
const mode = (path: string) => (statSync(path).mode & 0o777).toString(8)

describe('the key that seals', () => {
	test('is made at the first need, with its password beside it, for nobody else to read', () => {
		const of = folder()
		expect(isSealThere(of)).toBe(false)
		sealKey(of, nothing, now)
		expect(isSealThere(of)).toBe(true)
		expect([join(of, 'seal'), p12(of), beside(of)].map(mode)).toEqual(['700', '600', '600'])
		expect(readdirSync(join(of, 'seal')).toSorted()).toEqual(['password', 'studio.p12'])
		expect(readFileSync(beside(of), 'utf8')).toMatch(/^[\w-]{43}\n$/)
	})

	test('is never made a second time', () => {
		const of = folder()
		const made = sealKey(of, nothing, now)
		const bytes = readFileSync(p12(of))
		const again = sealKey(of, nothing, new Date('2030-01-01T00:00:00Z'))
		expect(readFileSync(p12(of)).equals(bytes)).toBe(true)
		expect(again.certificate.equals(made.certificate)).toBe(true)
		expect(again.serial.equals(sealKey(folder(), nothing, now).serial)).toBe(false)
	})

	test('a making that was broken off after the password goes on with the same', () => {
		const of = folder()
		sealKey(of, nothing, now)
		const password = readFileSync(beside(of), 'utf8')
		rmSync(p12(of))
		sealKey(of, nothing, now)
		expect(readFileSync(beside(of), 'utf8')).toBe(password)
	})

	// RFC 5280, sections 4.1.2.2, 4.2.1.3 and 4.2.1.9; read by Node’s own reader of certificates.
	test('has a certificate of its own: RSA of 3,072 bits, SHA-256, twenty years, to sign alone', () => {
		const { certificate, key } = sealKey(folder(), nothing, now)
		const read = new X509Certificate(certificate)
		expect(read.verify(read.publicKey)).toBe(true)
		expect(read.checkPrivateKey(key)).toBe(true)
		expect(read.publicKey.asymmetricKeyDetails?.modulusLength).toBe(3072)
		expect(read.ca).toBe(false)
		expect([new Date(read.validFrom), new Date(read.validTo)]).toEqual([now, new Date('2046-11-20T00:00:00Z')])
		expect(certificate.toString('latin1')).toContain(
			// sha256WithRSAEncryption, 1.2.840.113549.1.1.11
			Buffer.from('06092a864886f70d01010b', 'hex').toString('latin1'),
		)
	})

	test('with a password of the studio’s own, none is kept', () => {
		const of = folder()
		sealKey(of, named, now)
		expect(existsSync(beside(of))).toBe(false)
		expect(() => sealKey(of, named, now)).not.toThrow()
	})

	test('with a password in a file, its first line counts', () => {
		const of = folder()
		const file = join(of, 'word')
		writeFileSync(file, 'geraniums in a row\nand more\n', { mode: 0o600 })
		sealKey(of, { password: undefined, file }, now)
		expect(() => sealKey(of, named, now)).not.toThrow()
	})
})

describe('it is refused', () => {
	test('with another password', () => {
		const of = folder()
		sealKey(of, named, now)
		const bytes = readFileSync(p12(of))
		expect(() => sealKey(of, { ...named, password: 'marigolds in a row' }, now)).toThrow(
			`The password does not open ${p12(of)}: set SEAL_PASSWORD or SEAL_PASSWORD_FILE to the one that it was made with.`,
		)
		expect(readFileSync(p12(of)).equals(bytes)).toBe(true)
	})

	test('without a password where there is a key, and none is made up', () => {
		const of = folder()
		sealKey(of, named, now)
		expect(() => sealKey(of, nothing, now)).toThrow(`The seal’s password is not in ${beside(of)}`)
		expect(existsSync(beside(of))).toBe(false)
	})

	test.each([
		{ name: 'the key', path: p12, to: 0o640 },
		{ name: 'the password', path: beside, to: 0o604 },
		{ name: 'the folder', path: (of: string) => join(of, 'seal'), to: 0o750 },
	])('when others can read $name', ({ path, to }) => {
		const of = folder()
		sealKey(of, nothing, now)
		chmodSync(path(of), to)
		expect(() => sealKey(of, nothing, now)).toThrow(`${path(of)} can be read by others: chmod`)
	})

	test('when what lies there is no key', () => {
		const of = folder()
		sealKey(of, nothing, now)
		writeFileSync(p12(of), 'a letter')
		expect(() => sealKey(of, nothing, now)).toThrow(`${p12(of)} is no key that can be read`)
	})

	test('when the file of the password is not there, or empty', () => {
		const of = folder()
		const file = join(of, 'word')
		expect(() => sealKey(of, { password: undefined, file }, now)).toThrow(`SEAL_PASSWORD_FILE names ${file}`)
		writeFileSync(file, '\n', { mode: 0o600 })
		expect(() => sealKey(of, { password: undefined, file }, now)).toThrow('holds no password')
		expect(existsSync(p12(of))).toBe(false)
	})
})

describe('in the environment', () => {
	test('a password, a file of one, or neither', () => {
		expect(readEnv({ NODE_ENV: 'test' }).sealPassword).toEqual(nothing)
		expect(readEnv({ NODE_ENV: 'test', SEAL_PASSWORD: named.password }).sealPassword).toEqual(named)
		const file = '/run/secrets/seal'
		expect(readEnv({ NODE_ENV: 'test', SEAL_PASSWORD_FILE: file }).sealPassword).toEqual({ password: undefined, file })
	})

	test('not both, and none of a few letters', () => {
		const both = { NODE_ENV: 'test', SEAL_PASSWORD: named.password, SEAL_PASSWORD_FILE: '/a' } as const
		expect(() => readEnv(both)).toThrow('SEAL_PASSWORD and SEAL_PASSWORD_FILE are both set: keep one.')
		expect(() => readEnv({ NODE_ENV: 'test', SEAL_PASSWORD: 'short' })).toThrow('SEAL_PASSWORD has fewer than 12')
	})
})
