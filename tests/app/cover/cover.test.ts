import fc from 'fast-check'
import sharp from 'sharp'
import { afterAll, beforeAll, describe, expect, test, vi } from 'vitest'
import { coverPng } from '@/app/server/picture/cover/cover-png'
import { drawable } from '@/app/server/picture/cover/drawable'
import { coverFonts } from '@/app/server/picture/cover/fonts'
import type { Cover } from '@/lib/proposal/offer/cover'
import { type Hex, hex } from '@/lib/units/hex'

// The mark of a bundler that has no server side: there is no bundler here.
vi.mock('server-only', () => ({}))

const palette = (name: string, ...hexes: string[]) => ({ name, hexes: hexes.map((text): Hex => hex(text)) })
const cover: Cover = {
	season: 'Winter 2026–27',
	studio: 'Larkfield Containers',
	palettes: [
		palette('Copper and plum', '#b5653a', '#6d3049', '#2f4a3c'),
		palette('Frost', '#c9d6df', '#7f95a3', '#33454f'),
	],
}
const { known } = coverFonts()

/** Whatever would be asked of the network. */
const asked: string[] = []
const ours = globalThis.fetch
beforeAll(() => {
	globalThis.fetch = async (input, init) => {
		const address = input instanceof Request ? input.url : String(input)
		if (/^(?:file|data):/.test(address)) return ours(input, init)
		asked.push(address)
		throw new Error('there is no network')
	}
})
afterAll(() => {
	globalThis.fetch = ours
})

async function pixelsOf(of: Cover) {
	const { data, info } = await sharp(await coverPng(of))
		.removeAlpha()
		.raw()
		.toBuffer({ resolveWithObject: true })
	return (x: number, y: number) => {
		const at = (y * info.width + x) * info.channels
		return `#${data.subarray(at, at + 3).toString('hex')}`
	}
}

describe('a cover', () => {
	test('is a picture of the size in which links are shown', async () => {
		const { format, width, height } = await sharp(await coverPng(cover)).metadata()
		expect([format, width, height]).toEqual(['png', 1200, 630])
	})

	test('shows each palette’s colours from left to right', async () => {
		const at = await pixelsOf(cover)
		const seen = [...new Set(Array.from({ length: 60 }, (_, n) => at(n * 20 + 3, 100)))]
		const hexes = cover.palettes.flatMap((of) => of.hexes)
		expect(seen.filter((one) => hexes.some((of) => of === one))).toEqual(hexes)
	})

	test('is drawn anew for another season', async () => {
		const other = await coverPng({ ...cover, season: 'Spring 2027' })
		expect(other.equals(await coverPng(cover))).toBe(false)
	})

	test.each([
		['🌸 Fleur & Søn', 'Fleur & Søn'],
		['Ogród Żółć', 'Ogród Żółć'],
		['Сад у двери', 'Сад у двери'],
		['Κήπος', 'Κήπος'],
		['Vườn trước cửa', 'Vườn trước cửa'],
		['花 Studio', 'Studio'],
		['花園', ''],
		['حديقة', ''],
		['👩🏽‍🌾', ''],
		['1️⃣ Door', '1 Door'],
		['Bloom™ ©', 'Bloom'],
		['a\u202eb\u200d\u0000c\n d', 'abc d'],
	])('writes of %j what its fonts can draw: %j', (name, written) => {
		expect(drawable({ ...cover, studio: name }, known).studio).toBe(written)
	})

	test('never asks the network, whatever the names', async () => {
		const text = fc.string({ unit: 'grapheme', maxLength: 40 })
		await fc.assert(
			fc.asyncProperty(text, text, text, async (studio, season, name) => {
				const png = await coverPng({ season, studio, palettes: [palette(name, '#b5653a')] })
				expect(png.subarray(1, 4).toString()).toBe('PNG')
			}),
			{ numRuns: 25 },
		)
		expect(asked).toEqual([])
	})

	test('draws every letter that its fonts know, without the network', async () => {
		const letters = [...known].map((point) => String.fromCodePoint(point))
		for (let from = 0; from < letters.length; from += 60)
			await coverPng({ ...cover, studio: `a${letters.slice(from, from + 60).join('')}` })
		expect([asked, letters.length > 800]).toEqual([[], true])
	})
})
