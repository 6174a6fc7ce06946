import sharp from 'sharp'
import { beforeAll, describe, expect, it } from 'vitest'
import { z } from 'zod'
import { photo } from '../ask/bodies'
import { send } from '../ask/send'
import { heic, plain } from '../look/no-photos'
import { open } from '../site/here'
import { openSession } from '../site/people'
import { snapshot, snapshotAtRest } from '../site/snapshot'
import { thingsOf } from '../site/things'

const answer = z.object({ says: z.string(), colours: z.array(z.object({ hex: z.string() })).optional() })
let path: string
let session: string

beforeAll(() => {
	path = `/studio/clients/${thingsOf(open.site.folder, open.site.cast, 'clapboard').client}/photo`
	session = openSession(open.site.folder, open.site.cast.people.designer.id)
})

async function look(bytes: Buffer) {
	const before = await snapshotAtRest(open.site.folder)
	const said = await send(open.site.url, path, { method: 'POST', session, ...photo(bytes) })
	expect(snapshot(open.site.folder)).toEqual(before)
	return { status: said.status, ...answer.parse(JSON.parse(said.body)) }
}

const unreadable =
	'This could not be read as a photo. Send it as JPEG, PNG or WebP; a phone’s HEIC has to be saved as JPEG first.'

describe('a photo of the front', () => {
	it.each<{ what: string; make: () => Promise<Buffer> | Buffer }>([
		{
			what: 'a bomb: 64 million pixels in a few kilobytes',
			make: () => plain(8000, 8000).png({ compressionLevel: 9 }).toBuffer(),
		},
		{ what: 'cut short', make: async () => (await plain(900, 700).jpeg().toBuffer()).subarray(0, 400) },
		{
			what: 'a drawing',
			make: () =>
				Buffer.from('<svg xmlns="http://www.w3.org/2000/svg" width="9" height="9"><rect width="9" height="9"/></svg>'),
		},
		{
			what: 'a drawing that begins like a photo',
			make: () => Buffer.from('RIFF    WEBP<svg xmlns="http://www.w3.org/2000/svg" width="9" height="9"></svg>'),
		},
		{ what: 'HEIC', make: () => heic },
		{ what: 'a moving picture', make: () => plain(9, 9).gif().toBuffer() },
		{ what: 'TIFF', make: () => plain(9, 9).tiff().toBuffer() },
		{ what: 'nothing at all', make: () => Buffer.alloc(0) },
		{ what: 'words', make: () => Buffer.from('a front of blue boards') },
	])('that is $what is refused in a sentence, and nothing is changed', async ({ make }) => {
		expect(await look(await make())).toEqual({ status: 422, says: unreadable })
	})

	it('of one pixel has one colour', async () => {
		const { status, colours } = await look(await plain(1, 1).png().toBuffer())
		expect([status, colours?.map(({ hex }) => hex)]).toEqual([200, ['#5f7488']])
	})

	it.each([
		{ what: 'for print, in CMYK', make: () => plain(300, 200).toColourspace('cmyk').jpeg().toBuffer() },
		{ what: 'in greys', make: () => plain(300, 200).greyscale().jpeg().toBuffer() },
		{ what: 'as WebP', make: () => plain(300, 200).webp().toBuffer() },
	])('$what has its one colour', async ({ make }) => {
		const { status, colours } = await look(await make())
		expect([status, colours?.length]).toEqual([200, 1])
	})

	it('loses what the camera wrote: the small picture that comes back says no place', async () => {
		const bytes = await plain(300, 200)
			.withExif({ IFD3: { GPSLatitudeRef: 'N', GPSLatitude: '51/1 30/1 0/1' } })
			.jpeg()
			.toBuffer()
		expect((await sharp(bytes).metadata()).exif).toBeDefined()
		const said = await send(open.site.url, path, { method: 'POST', session, ...photo(bytes) })
		const { preview } = z.object({ preview: z.string() }).parse(JSON.parse(said.body))
		const shown = Buffer.from(preview.replace(/^data:image\/jpeg;base64,/, ''), 'base64')
		expect((await sharp(shown).metadata()).exif).toBeUndefined()
	})

	it('of more than fifteen megabytes is refused before it is read', async () => {
		const said = await send(open.site.url, path, { method: 'POST', session, ...photo(Buffer.alloc(15_400_000, 1)) })
		expect(said.status).toBe(413)
	})
})
