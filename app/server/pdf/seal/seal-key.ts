import { createPrivateKey } from 'node:crypto'
import { existsSync, mkdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import forge from 'node-forge'
import { newCertificate } from './certificate'
import type { SealKey } from './cms'
import { mustBePrivate, writeOnce } from './kept-file'
import { type PasswordFrom, sealPassword } from './password'

const bytesOf = (value: forge.asn1.Asn1) => Buffer.from(forge.asn1.toDer(value).getBytes(), 'binary')

function opened(bytes: Buffer, password: string) {
	const value = forge.asn1.fromDer(forge.util.createBuffer(bytes.toString('binary')))
	const p12 = forge.pkcs12.pkcs12FromAsn1(value, true, password)
	const bagOf = (type: string) => p12.getBags({ bagType: type })[type]?.[0]
	return {
		key: bagOf(forge.pki.oids.pkcs8ShroudedKeyBag ?? '')?.key,
		certificate: bagOf(forge.pki.oids.certBag ?? '')?.cert,
	}
}

function read(file: string, password: string): SealKey {
	mustBePrivate(file, '600')
	try {
		const { key, certificate } = opened(readFileSync(file), password)
		if (!key || !certificate) throw new Error('it holds no key or no certificate')
		return {
			key: createPrivateKey(forge.pki.privateKeyToPem(key)),
			certificate: bytesOf(forge.pki.certificateToAsn1(certificate)),
			issuer: bytesOf(forge.pki.distinguishedNameToAsn1(certificate.issuer)),
			serial: Buffer.from(certificate.serialNumber, 'hex'),
			until: certificate.validity.notAfter,
		}
	} catch (error) {
		const why = error instanceof Error ? error.message : String(error)
		throw new Error(
			why.includes('Invalid password')
				? `The password does not open ${file}: set SEAL_PASSWORD or SEAL_PASSWORD_FILE to the one that it was made with.`
				: `${file} is no key that can be read: ${why}.`,
		)
	}
}

const placesIn = (folder: string) => {
	const inside = join(folder, 'seal')
	return { inside, file: join(inside, 'studio.p12'), beside: join(inside, 'password') }
}

export const isSealThere = (folder: string): boolean => existsSync(placesIn(folder).file)

/**
 * The studio's key and certificate, in the data folder; made at the first need, never written over.
 * @throws with one sentence when others could read it, or the password is another one
 */
export function sealKey(folder: string, from: PasswordFrom, now: Date): SealKey {
	const { inside, file, beside } = placesIn(folder)
	mkdirSync(inside, { recursive: true, mode: 0o700 })
	mustBePrivate(inside, '700')
	const password = sealPassword(from, beside, existsSync(file))
	if (!existsSync(file)) writeOnce(file, newCertificate(password, now))
	return read(file, password)
}
