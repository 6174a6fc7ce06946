import 'server-only'
import { ImageResponse } from '@vercel/og'
import { CoverPicture } from '@/app/documents/cover/cover'
import { coverSize } from '@/lib/forms/pictures/cover-address'
import type { Cover } from '@/lib/proposal/offer/cover'
import { type Hash, hashOf } from '@/lib/record/hash'
import { sharp } from '../codec'
import { drawable } from './drawable'
import { coverFonts } from './fonts'

/** A mail to each contact, and whoever is shown the link: the same few again and again. */
const mostKept = 30
const kept = new Map<Hash, Promise<Buffer>>()

async function drawn(cover: Cover): Promise<Buffer> {
	const { fonts, known } = coverFonts()
	const response = new ImageResponse(
		CoverPicture({ cover: drawable(cover, known), fonts: fonts.map(({ name }) => name) }),
		{ ...coverSize, fonts },
	)
	// Areas of one colour and some letters: a third of the bytes, and every mail carries them.
	return sharp(Buffer.from(await response.arrayBuffer()))
		.removeAlpha()
		.png({ palette: true, colours: 64, dither: 0, compressionLevel: 9 })
		.toBuffer()
}

/** A cover as PNG. @throws where it cannot be drawn */
export function coverPng(cover: Cover): Promise<Buffer> {
	const of = hashOf(cover)
	const png = kept.get(of) ?? drawn(cover)
	kept.set(of, png)
	png.catch(() => kept.delete(of))
	const [oldest] = kept.keys()
	if (kept.size > mostKept && oldest !== undefined) kept.delete(oldest)
	return png
}
