import { createHash, type KeyObject, sign } from 'node:crypto'
import { context, der, inOrder, oid, tags } from './der'

/** What a seal is made with: the key, its certificate, and how the certificate is named (issuer as DER, serial number). */
export type SealKey = {
	readonly key: KeyObject
	readonly certificate: Buffer
	readonly issuer: Buffer
	readonly serial: Buffer
	/** When the certificate ends. */
	readonly until: Date
}

const ids = {
	data: oid('1.2.840.113549.1.7.1'),
	signedData: oid('1.2.840.113549.1.7.2'),
	contentType: oid('1.2.840.113549.1.9.3'),
	messageDigest: oid('1.2.840.113549.1.9.4'),
	signingCertificateV2: oid('1.2.840.113549.1.9.16.2.47'),
	sha256: oid('2.16.840.1.101.3.4.2.1'),
	rsa: oid('1.2.840.113549.1.1.1'),
}
const algorithm = (id: Buffer) => der(tags.sequence, id, der(tags.nothing))
const one = der(tags.integer, Buffer.from([1]))
const sha256 = (bytes: Uint8Array) => createHash('sha256').update(bytes).digest()
const attribute = (id: Buffer, value: Buffer) => der(tags.sequence, id, der(tags.set, value))

/** Which certificate it is, inside what is signed (RFC 5035, section 3): SHA-256 is the default and is left out. */
function signingCertificate({ certificate, issuer, serial }: SealKey): Buffer {
	const names = der(tags.sequence, der(context(4), issuer))
	const name = der(tags.sequence, names, der(tags.integer, serial))
	const its = der(tags.sequence, der(tags.octets, sha256(certificate)), name)
	return der(tags.sequence, der(tags.sequence, its))
}

/**
 * A detached signature over `bytes` as Cryptographic Message Syntax (RFC 5652) with what ETSI EN 319 142-1 asks of one in a
 * PDF file: the certificate is named inside, and the time is the file's to say.
 */
export function detached(bytes: Uint8Array, by: SealKey): Buffer {
	const attributes = inOrder([
		attribute(ids.contentType, ids.data),
		attribute(ids.messageDigest, der(tags.octets, sha256(bytes))),
		attribute(ids.signingCertificateV2, signingCertificate(by)),
	])
	// What is signed bears the tag of a set; where it stands, it bears [0] (RFC 5652, section 5.4).
	const signature = sign('sha256', der(tags.set, ...attributes), by.key)
	const signer = der(
		tags.sequence,
		one,
		der(tags.sequence, by.issuer, der(tags.integer, by.serial)),
		algorithm(ids.sha256),
		der(context(0), ...attributes),
		algorithm(ids.rsa),
		der(tags.octets, signature),
	)
	const signed = der(
		tags.sequence,
		one,
		der(tags.set, algorithm(ids.sha256)),
		der(tags.sequence, ids.data),
		der(context(0), by.certificate),
		der(tags.set, signer),
	)
	return der(tags.sequence, ids.signedData, der(context(0), signed))
}
