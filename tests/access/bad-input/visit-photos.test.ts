import sharp from 'sharp'
import { beforeAll, describe, expect, it } from 'vitest'
import { visitForms } from '../ask/bodies'
import { type Fields, over } from '../ask/forms'
import { send } from '../ask/send'
import { noPhotos, plain } from '../look/no-photos'
import { open } from '../site/here'
import { openSession } from '../site/people'
import { count, snapshot, snapshotAtRest } from '../site/snapshot'
import { type Things, thingsOf } from '../site/things'

let things: Things
let session: string
let designer: string

beforeAll(() => {
	const { folder, cast } = open.site
	things = thingsOf(folder, cast, 'bakery')
	session = openSession(folder, cast.people.bakeryApprover.id)
	designer = openSession(folder, cast.people.designer.id)
})

const edge = 'doorsill-photos-51c0'

/** A form with files, as a browser sends it. */
function withFiles(fields: Fields, name: string, files: readonly Buffer[]) {
	const part = (head: string, value: string | Buffer) => [
		Buffer.from(`--${edge}\r\nContent-Disposition: form-data; ${head}\r\n\r\n`),
		Buffer.from(value),
		Buffer.from('\r\n'),
	]
	const texts = fields.flatMap(([field, value]) => part(`name="${field}"`, value))
	const all = files.flatMap((file, index) =>
		part(`name="${name}"; filename="${index}.jpg"\r\nContent-Type: image/jpeg`, file),
	)
	return {
		body: Buffer.concat([...texts, ...all, Buffer.from(`--${edge}--\r\n`)]),
		headers: { 'content-type': `multipart/form-data; boundary=${edge}` },
	}
}

const report = (files: readonly Buffer[]) =>
	send(open.site.url, `/home/${things.client}/wrong/send`, {
		...{ method: 'POST', session },
		...withFiles(visitForms.wrong(things), 'wrong', files),
	})

/** Back at the form with a sentence, the words still there, and nothing changed. */
async function isSaid(files: readonly Buffer[], sentence: string): Promise<void> {
	const before = await snapshotAtRest(open.site.folder)
	const said = await report(files)
	expect([said.status, said.headers.location]).toEqual([303, expect.stringContaining('/wrong?form=')])
	expect(snapshot(open.site.folder)).toEqual(before)
	const page = await send(open.site.url, String(said.headers.location), { session })
	expect(page.body).toContain(sentence)
	expect(page.body).toContain('A globe by the door is broken.')
}

describe('a photo of what is wrong', () => {
	it.each(noPhotos)('that is $what is refused in a sentence', async ({ make }) => {
		await isSaid([await make()], 'could not be read as a photo')
	})

	it('sixty at once are refused in a sentence', async () => {
		const small = await plain(30, 20).jpeg().toBuffer()
		await isSaid(
			Array.from({ length: 60 }, () => small),
			'That is more than 4 photos.',
		)
	})

	it('of more than forty megabytes are refused before they are read', async () => {
		expect((await report([Buffer.alloc(41_500_000, 1)])).status).toBe(413)
	})

	it('is kept small, upright and without what the camera wrote', async () => {
		const before = count(open.site.folder, 'photo')
		const bytes = await plain(3000, 2000)
			.withExif({ IFD3: { GPSLatitudeRef: 'N', GPSLatitude: '51/1 30/1 0/1' } })
			.withMetadata({ orientation: 6 })
			.jpeg()
			.toBuffer()
		expect((await report([bytes])).headers.location).toContain('told=reported')
		expect(count(open.site.folder, 'photo')).toBe(before + 1)
		const page = await send(open.site.url, `/home/${things.client}/visits`, { session })
		const [, id = ''] = /\/photo\/([0-9a-f-]{36})\/large\.jpg/.exec(page.body) ?? []
		const file = await fetch(`${open.site.url}/photo/${id}/large.jpg`, { headers: { cookie: `doorsill=${session}` } })
		expect(file.headers.get('cache-control')).toBe('private, max-age=31536000, immutable')
		expect(file.headers.get('content-security-policy')).toBe("default-src 'none'")
		expect(file.headers.get('x-content-type-options')).toBe('nosniff')
		const { exif, width, height } = await sharp(Buffer.from(await file.arrayBuffer())).metadata()
		expect([exif, width, height]).toEqual([undefined, 1067, 1600])
	})
})

describe('a visit', () => {
	it.each([
		[
			'dated next century',
			[
				['day', '2126-03-04'],
				['do', 'plan'],
			],
			'more than a year ahead',
		],
		[
			'written down before it is made',
			[['day', new Date(Date.now() + 3 * 86_400_000).toISOString().slice(0, 10)]],
			'still to come',
		],
		['on no day of the calendar', [['day', '2026-02-30']], 'Choose a day of the calendar.'],
	] as const)('%s is refused in a sentence', async (_, other, sentence) => {
		const before = await snapshotAtRest(open.site.folder)
		const form = over(visitForms['new visit'](things), other)
		const path = `/studio/visits/new/${things.client}/keep`
		const said = await send(open.site.url, path, { method: 'POST', session: designer, ...withFiles(form, 'after', []) })
		expect(snapshot(open.site.folder)).toEqual(before)
		const page = await send(open.site.url, String(said.headers.location), { session: designer })
		expect(page.body).toContain(sentence)
		expect(page.body).toContain('Bring the long can.')
	})
})
