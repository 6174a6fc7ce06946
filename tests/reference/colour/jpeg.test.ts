import sharp from 'sharp'
import { describe, expect, test } from 'vitest'
import { difference } from '@/lib/colour/difference'
import type { Pixels } from '@/lib/colour/site/photo'
import { siteColours } from '@/lib/colour/site/site-colours'
import { hex } from '@/lib/units/hex'
import { front, type Painted, paint } from '../../lib/colour/site/paint'
import { chartPhotos, laid } from './checker'

sharp.concurrency(1)

/** As a phone would save it and the site read it: JPEG with half the colour (4:2:0), decoded to at most 400 pixels wide. */
async function throughJpeg(
	{ pixels, size }: Painted,
	quality: number,
): Promise<{ pixels: Pixels; width: number; height: number }> {
	const { width, height } = size
	const jpeg = await sharp(pixels, { raw: { width, height, channels: 3 } })
		.jpeg({ quality, chromaSubsampling: '4:2:0' })
		.toBuffer()
	const { data, info } = await sharp(jpeg)
		.resize({ width: 400, withoutEnlargement: true })
		.removeAlpha()
		.raw()
		.toBuffer({ resolveWithObject: true })
	expect(info.channels).toBe(3)
	return { pixels: data, width: info.width, height: info.height }
}

async function furthest(photo: Painted, quality: number, colours: readonly string[]): Promise<number> {
	const { pixels, ...size } = await throughJpeg(photo, quality)
	const found = siteColours(pixels, { ...size, channels: 3 })
	return Math.max(...colours.map((colour) => Math.min(...found.map((each) => difference(each.hex, hex(colour))))))
}

describe('a ColorChecker in JPEG', () => {
	test.each([
		{ quality: 90, within: 1 },
		{ quality: 70, within: 1.5 },
		{ quality: 40, within: 2.5 },
	])('of quality $quality with noise: all 24 patches are found within ΔE00 $within', async ({ quality, within }) => {
		for (const colours of chartPhotos) {
			const off = await furthest(paint(400, 300, '#000000', laid(colours), { noise: 4 }), quality, colours)
			expect(off).toBeLessThan(within)
		}
	})
})

test('a front of 1200 × 900 in JPEG, scaled down to 400 on reading: every colour within ΔE00 1, and no other', async () => {
	const patches = front.patches.map(({ colour, at: [x, y, w, h] }) => ({
		colour,
		at: [3 * x, 3 * y, 3 * w, 3 * h] as const,
	}))
	const photo = paint(1200, 900, front.brick, patches, { noise: 5 })
	const colours = [front.brick, ...patches.map(({ colour }) => colour)]
	const off = await furthest(photo, 80, colours)
	expect(off).toBeLessThan(1)
	const { pixels, ...size } = await throughJpeg(photo, 80)
	expect(siteColours(pixels, { ...size, channels: 3 })).toHaveLength(colours.length)
})
