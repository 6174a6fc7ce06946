import 'server-only'
import { corrected } from '@/lib/colour/site/corrected'
import type { PhotoSize, Spot } from '@/lib/colour/site/photo'
import { type FoundColour, siteColours } from '@/lib/colour/site/site-colours'
import { sharp } from './codec'

const most = { pixels: 50_000_000, seconds: 10, side: 400, preview: 720 }
const kinds = new Set(['jpeg', 'png', 'webp'])

/** How each kind begins (ITU-T T.81 B.1.1.3, PNG 5.2, RFC 9649 2.4). */
const marks = [/^\xff\xd8\xff/, /^\x89PNG\r\n\x1a\n/, /^RIFF.{4}WEBP/s]

const begins = (bytes: Uint8Array) => Buffer.from(bytes.subarray(0, 12)).toString('latin1')

export type Looked =
	| { readonly ok: true; readonly colours: readonly FoundColour[]; readonly preview: string; readonly says: string }
	| { readonly ok: false; readonly says: string }

export const unreadable = {
	ok: false,
	says: 'This could not be read as a photo. Send it as JPEG, PNG or WebP; a phone’s HEIC has to be saved as JPEG first.',
} as const

const open = (bytes: Uint8Array) => sharp(bytes, { limitInputPixels: most.pixels, failOn: 'error' })

/** Looked at before the library is let near: it would open a drawing as well. */
export async function isPhoto(bytes: Uint8Array): Promise<boolean> {
	if (!marks.some((mark) => mark.test(begins(bytes)))) return false
	const { format, pages = 1 } = await open(bytes).metadata()
	return kinds.has(format ?? '') && pages === 1
}

/** Upright, in sRGB, without what the camera wrote beside it, no wider than `side`. */
export const upright = (bytes: Uint8Array, side: number) =>
	open(bytes)
		.timeout({ seconds: most.seconds })
		.autoOrient()
		.resize(side, side, { fit: 'inside', withoutEnlargement: true })
		.toColourspace('srgb')
		.flatten({ background: '#ffffff' })

async function look(bytes: Uint8Array, whiteAt: Spot | null): Promise<Looked> {
	if (!(await isPhoto(bytes))) return unreadable
	const { data, info } = await upright(bytes, most.side).removeAlpha().raw().toBuffer({ resolveWithObject: true })
	const { channels } = info
	if (channels > 4) return unreadable
	const size: PhotoSize = { width: info.width, height: info.height, channels: channels === 1 ? 1 : 3 }
	const cast = whiteAt === null ? null : corrected(data, size, whiteAt)
	const colours = siteColours(cast?.ok ? cast.pixels : data, size)
	const preview = await upright(bytes, most.preview).jpeg({ quality: 72 }).toBuffer()
	const says = cast === null || cast.ok ? '' : cast.says
	return { ok: true, colours, preview: `data:image/jpeg;base64,${preview.toString('base64')}`, says }
}

let before: Promise<unknown> = Promise.resolve()

/** One photo at a time, whoever sends it and whatever for: an open one takes a hundred megabytes and more. */
export function inTurn<T>(run: () => Promise<T>): Promise<T> {
	const mine = before.then(run)
	before = mine.catch(() => undefined)
	return mine
}

/** The colours of a photo; the photo itself is not kept. */
export const lookAtPhoto = (bytes: Uint8Array, whiteAt: Spot | null): Promise<Looked> =>
	inTurn(() => look(bytes, whiteAt)).catch((): Looked => unreadable)
