import { plainAddPlaceholder } from '@signpdf/placeholder-plain'
import { SignPdf } from '@signpdf/signpdf'
import { Signer, SUBFILTER_ETSI_CADES_DETACHED } from '@signpdf/utils'
import type { Moment } from '@/lib/units/day'
import { detached, type SealKey } from './cms'

class Seal extends Signer {
	readonly by: SealKey

	constructor(by: SealKey) {
		super()
		this.by = by
	}

	override async sign(bytes: Buffer): Promise<Buffer> {
		return detached(bytes, this.by)
	}
}

/** Bytes kept free for the signature: it takes some 1,700. */
const room = 4096

/** The library names the line before the table of what it added; readers mend that, strict ones say so. */
function pointed(pdf: Buffer): Buffer {
	const end = pdf.lastIndexOf('startxref')
	const table = pdf.lastIndexOf('xref', end - 1)
	return Buffer.concat([pdf.subarray(0, end), Buffer.from(`startxref\n${table}\n%%EOF`)])
}

/**
 * The file with the studio's seal in it (ISO 32000-1, section 12.8; ETSI EN 319 142-1): any byte of it that is another
 * one later is found. The same file, key and moment give the same bytes.
 * @throws when `bytes` is no PDF with a table of its objects, as `agreementPdf` makes them
 */
export async function sealPdf(bytes: Buffer, by: SealKey, at: Moment): Promise<Buffer> {
	const signingTime = new Date(at)
	const placed = plainAddPlaceholder({
		pdfBuffer: bytes,
		reason: 'Sealed by the studio: shows whether it was altered',
		contactInfo: '',
		name: 'Studio seal',
		location: '',
		signingTime,
		signatureLength: room,
		subFilter: SUBFILTER_ETSI_CADES_DETACHED,
	})
	return new SignPdf().sign(pointed(placed), new Seal(by), signingTime)
}
