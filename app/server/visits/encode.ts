import 'server-only'
import type { Incoming } from '@/db/clients/visits/photos/with-photos'
import { type PhotoSize, photoSizes } from '@/lib/visit/photo'
import { inTurn, isPhoto, unreadable, upright } from '../picture/photo'

const quality = 78

async function jpeg(bytes: Uint8Array, size: PhotoSize) {
	const made = upright(bytes, photoSizes[size]).jpeg({ quality, mozjpeg: true })
	const { data, info } = await made.toBuffer({ resolveWithObject: true })
	return { bytes: new Uint8Array(data), width: info.width, height: info.height }
}

async function encode(bytes: Uint8Array, side: Incoming['side']): Promise<Incoming | undefined> {
	if (!(await isPhoto(bytes))) return undefined
	const large = await jpeg(bytes, 'large')
	const small = await jpeg(large.bytes, 'small')
	return { side, large: large.bytes, small: small.bytes, width: large.width, height: large.height }
}

export type Sent = { readonly side: Incoming['side']; readonly file: File }
export type Encoded =
	| { readonly ok: true; readonly photos: readonly Incoming[] }
	| { readonly ok: false; readonly side: Incoming['side']; readonly says: string }

/** Photos made ready to be kept; all of them, or none and which of them could not be read. */
export async function encodePhotos(sent: readonly Sent[]): Promise<Encoded> {
	const photos: Incoming[] = []
	for (const { side, file } of sent) {
		const bytes = new Uint8Array(await file.arrayBuffer())
		const made = await inTurn(() => encode(bytes, side)).catch(() => undefined)
		if (made === undefined) return { ok: false, side, says: `“${file.name.slice(0, 60)}”: ${unreadable.says}` }
		photos.push(made)
	}
	return { ok: true, photos }
}
