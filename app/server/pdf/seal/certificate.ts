import { generateKeyPairSync, randomBytes } from 'node:crypto'
import forge from 'node-forge'

const bits = 3072
const years = 20

/** Latin letters, figures and signs that every reader of certificates shows (RFC 5280 names a UTF8String; readers differ). */
const subject = [{ name: 'commonName', value: 'Studio seal, made by Doorsill' }]

/** A positive number of 127 bits (RFC 5280, section 4.1.2.2). */
const serial = () => `01${randomBytes(15).toString('hex')}`

/**
 * A key of its own and a certificate that it signs itself, as PKCS#12 (RFC 7292): RSA of 3,072 bits with SHA-256, which
 * NIST SP 800-57 part 1 takes to hold beyond 2030. It may sign, and nothing else.
 */
export function newCertificate(password: string, from: Date): Buffer {
	const { privateKey } = generateKeyPairSync('rsa', {
		modulusLength: bits,
		publicKeyEncoding: { type: 'spki', format: 'pem' },
		privateKeyEncoding: { type: 'pkcs8', format: 'pem' },
	})
	const key = forge.pki.privateKeyFromPem(privateKey)
	const certificate = forge.pki.createCertificate()
	certificate.publicKey = forge.pki.rsa.setPublicKey(key.n, key.e)
	certificate.serialNumber = serial()
	certificate.validity.notBefore = from
	certificate.validity.notAfter = new Date(
		Date.UTC(from.getUTCFullYear() + years, from.getUTCMonth(), from.getUTCDate()),
	)
	certificate.setSubject(subject)
	certificate.setIssuer(subject)
	certificate.setExtensions([
		{ name: 'basicConstraints', cA: false, critical: true },
		{ name: 'keyUsage', digitalSignature: true, nonRepudiation: true, critical: true },
		{ name: 'subjectKeyIdentifier' },
	])
	certificate.sign(key, forge.md.sha256.create())
	const p12 = forge.pkcs12.toPkcs12Asn1(key, [certificate], password, { algorithm: 'aes256', count: 10_000 })
	return Buffer.from(forge.asn1.toDer(p12).getBytes(), 'binary')
}
