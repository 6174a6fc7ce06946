import { v7 } from 'uuid'
import { describe, expect, it } from 'vitest'
import { kerbForms } from '../ask/bodies'
import { type Body, type Fields, multipart, over, withField } from '../ask/forms'
import { placeOf } from '../ask/outcome'
import { inParallel } from '../ask/send'
import { aliveIn, escaped, isStored, type Kind, triedIn } from '../look/hostile'
import { noPhotos, plain } from '../look/no-photos'
import { open } from '../site/here'
import { snapshot, snapshotAtRest } from '../site/snapshot'
import { type Things, thingsOf } from '../site/things'

const things = (): Things => thingsOf(open.site.folder, open.site.cast, 'clapboard')
const path = ({ client }: Pick<Things, 'client'>) => `/studio/clients/${client}/kerb/keep`
const form = () => kerbForms['a new place'](things())

const send = (body: Body, headers: Record<string, string> = {}) =>
	open.ask('designer', path(things()), { method: 'POST', ...body, headers: { ...body.headers, ...headers } })

/** As the page's own script sends it. */
const byScript = (fields: Fields) => send(multipart(fields), { accept: 'application/json' })

const boxes: Readonly<Record<string, Kind>> = {
	name: 'words',
	shape: 'choice',
	wall: 'choice',
	colour: 'hex',
	owner: 'choice',
	topCm: 'length',
	topDepthCm: 'length',
	bottomCm: 'length',
	bottomDepthCm: 'length',
	heightCm: 'length',
	sillToGlassCm: 'length',
	light: 'choice',
	waterer: 'choice',
	stands: 'choice',
	limitedWeight: 'choice',
	walkLeftCm: 'length',
	hasDrainHole: 'tick',
}
const mayBeEmpty = ['topDepthCm', 'bottomDepthCm', 'sillToGlassCm', 'walkLeftCm', 'new.accessNote']

const fields: readonly (readonly [name: string, kind: Kind])[] = [
	['once', 'id'],
	['by', 'id'],
	['place', 'id'],
	['new.name', 'words'],
	['new.address', 'lines'],
	['new.taxPercent', 'number'],
	['new.driveMinutes', 'number'],
	['new.wallKind', 'choice'],
	['new.wallHex', 'hex'],
	['new.accessNote', 'lines'],
	...Object.entries(boxes).map(([box, kind]) => [`container.2.${box}`, kind] as const),
]
/** With no scripts a hidden field is told of in no box. */
const hidden = new Set(['once', 'by', 'place'])

async function unsaid(name: string, kind: Kind, value: string | Buffer): Promise<string | null> {
	const answer = await send(multipart(withField(form(), name, value)))
	if (answer.status !== 303) return `answered ${answer.status}`
	const page = await open.ask('designer', placeOf(answer))
	if (page.status !== 200 || !placeOf(answer).includes('form=')) return `led on to ${placeOf(answer).slice(0, 80)}`
	if (aliveIn(page.body).length > 0) return 'alive in the page'
	if (!page.body.includes('role="alert"')) return 'the form says nothing'
	const isBox = !hidden.has(name) && kind !== 'choice' && kind !== 'tick'
	const shown = typeof value === 'string' && !/[\u0000-\u001f]/.test(value) ? escaped(value) : ''
	return isBox && !page.body.includes(shown) ? 'what was typed is gone' : null
}

describe('what is written down at the kerb refuses what a box is not for, says so, and changes nothing', () => {
	it.each(fields)('%s', async (name, kind) => {
		const box = name.replace('container.2.', '')
		const values = triedIn(kind, mayBeEmpty.includes(box)).filter((value) => !isStored(kind, value))
		// Without a place known, an empty one is a new one.
		const refused = values.filter(({ value }) => !(name === 'place' && value === ''))
		const before = await snapshotAtRest(open.site.folder)
		const wrong: string[] = []
		await inParallel(refused, 6, async ({ what, value }) => {
			const why = await unsaid(name, kind, value)
			if (why !== null) wrong.push(`${what}: ${why}`)
		})
		expect(wrong.toSorted()).toEqual([])
		expect(snapshot(open.site.folder)).toEqual(before)
	})

	it('nothing, a box that it has not, boxes without end, thirteen containers', async () => {
		const before = await snapshotAtRest(open.site.folder)
		const one = form().filter(([name]) => !name.startsWith('container.2.'))
		const pot = one.flatMap(([name, value]) =>
			name.startsWith('container.1.') ? [[name.slice('container.1.'.length), value] as const] : [],
		)
		const thirteen = Array.from({ length: 13 }, (_, n) =>
			pot.map(([box, value]) => [`container.${n + 1}.${box}`, value] as const),
		).flat()
		const without = one.filter(([name]) => !name.startsWith('container.'))
		for (const sent of [
			[],
			[...form(), ['new.doorHex', '#101010'] as const],
			[...form(), ['container.1.__proto__', 'x'] as const],
			[...form(), ['container.1.retiredAt', 'now'] as const],
			[...form(), ...Array.from({ length: 900 }, (_, n) => [`container.${n}.name`, 'x'] as const)],
			without,
			[...without, ...thirteen],
		]) {
			const answer = await send(multipart(sent))
			expect([answer.status, placeOf(answer).includes('form=')]).toEqual([303, true])
			expect((await open.ask('designer', placeOf(answer))).status).toBe(200)
		}
		expect(snapshot(open.site.folder)).toEqual(before)
	})

	it.each(['<script>alert(1)</script>', '"><img src=x onerror=alert(1)>'])('keeps %s as text', async (value) => {
		const sent = withField(withField(form(), 'new.name', value), 'container.1.name', value)
		expect(placeOf(await send(multipart(sent)))).toContain('told=sent')
		for (const page of ['', '/kerb']) {
			const { body, status } = await open.ask('designer', `/studio/clients/${things().client}${page}`)
			expect([status, aliveIn(body), body.includes(escaped(value))]).toEqual([200, [], true])
		}
	})
})

describe('what the page’s own script is told', () => {
	it('that it is kept, once; sent again under its key it is said to be there and nothing is changed', async () => {
		const fields = form()
		const first = await byScript(fields)
		expect([first.status, JSON.parse(first.body)]).toEqual([200, { kept: expect.stringMatching(/^[0-9a-f-]{36}$/) }])
		const before = await snapshotAtRest(open.site.folder)
		for (const answer of [await byScript(fields), await byScript(over(fields, [['new.name', 'Another gate']]))])
			expect([answer.status, JSON.parse(answer.body)]).toEqual([200, { kept: 'before' }])
		const plain = await send(multipart(fields))
		expect(placeOf(plain)).toContain('told=before')
		expect(snapshot(open.site.folder)).toEqual(before)
	})

	it('pressed three times at once, it is made once', async () => {
		const fields = withField(form(), 'new.name', 'Thrice')
		const count = () => Number(snapshot(open.site.folder).place?.split(' ')[0])
		const before = count()
		const said = await Promise.all([1, 2, 3].map(() => byScript(fields)))
		expect([count(), said.map(({ status }) => status)]).toEqual([before + 1, [200, 200, 200]])
	})

	it('what is wrong, beside each box', async () => {
		const before = await snapshotAtRest(open.site.folder)
		const answer = await byScript(
			over(form(), [
				['container.2.heightCm', 'tall'],
				['new.name', ''],
			]),
		)
		expect([answer.status, JSON.parse(answer.body)]).toEqual([
			422,
			{
				errors: {
					'container.2.heightCm': expect.stringContaining('18 1/2'),
					'new.name': 'This cannot be left empty.',
				},
			},
		])
		expect(snapshot(open.site.folder)).toEqual(before)
	})

	it('that somebody else is signed in now, or nobody: nothing is kept under another name', async () => {
		const before = await snapshotAtRest(open.site.folder)
		const answer = await byScript([...form(), ['by', open.site.cast.people.helper.id]])
		expect([answer.status, JSON.parse(answer.body)]).toEqual([401, { signedOut: true }])
		const body = multipart(form())
		const out = await open.ask('signed out', path(things()), {
			...{ method: 'POST', ...body },
			headers: { ...body.headers, accept: 'application/json' },
		})
		expect([out.status, JSON.parse(out.body)]).toEqual([401, { signedOut: true }])
		const mine = await byScript([...form(), ['by', open.site.cast.people.designer.id]])
		expect(mine.status).toBe(200)
		expect(snapshot(open.site.folder).place).not.toEqual(before.place)
	})

	it('another client’s place is not there', async () => {
		const theirs = thingsOf(open.site.folder, open.site.cast, 'stucco')
		const before = await snapshotAtRest(open.site.folder)
		const sent = over(kerbForms['at a place'](things()), [['place', theirs.place]])
		for (const answer of [await byScript(sent), await send(multipart([...sent.slice(1), ['once', v7()]]))])
			expect(answer.status).toBe(404)
		expect(snapshot(open.site.folder)).toEqual(before)
	})
})

describe('its photo', () => {
	const edge = 'doorsill-kerb-2f1a'
	const withPhoto = (fields: Fields, bytes: Buffer): Body => {
		const { body } = multipart(fields)
		const own = /^--(\S+)\r\n/.exec(body.toString('latin1', 0, 200))?.[1] ?? edge
		const part = `--${own}\r\nContent-Disposition: form-data; name="photo"; filename="f.jpg"\r\nContent-Type: image/jpeg\r\n\r\n`
		return {
			body: Buffer.concat([Buffer.from(part), bytes, Buffer.from('\r\n'), Buffer.from(body)]),
			headers: { 'content-type': `multipart/form-data; boundary=${own}` },
		}
	}

	it('leaves its colours alone, and its largest is the wall where none was chosen', async () => {
		const fields = over(form(), [
			['new.wallHex', '#8a94a0'],
			['new.name', 'Blue gate'],
		])
		const answer = await send(withPhoto(fields, await plain(300, 200).jpeg().toBuffer()))
		expect(placeOf(answer)).toContain('told=sent')
		const { body } = await open.ask('designer', `/studio/clients/${things().client}`)
		expect(body).toMatch(/Blue gate[\s\S]*#5f7[0-9a-f]{3}/)
	})

	it.each(noPhotos)('that is $what is refused in a sentence, with all that was typed', async ({ make }) => {
		const before = await snapshotAtRest(open.site.folder)
		const answer = await send(withPhoto(form(), await make()))
		expect(placeOf(answer)).toContain('/kerb?form=')
		const { body } = await open.ask('designer', placeOf(answer))
		expect([body.includes('could not be read as a photo'), body.includes('Key under the third pot.')]).toEqual([
			true,
			true,
		])
		expect(snapshot(open.site.folder)).toEqual(before)
	})

	it('of more than fifteen megabytes is refused before it is read', async () => {
		expect((await send(withPhoto(form(), Buffer.alloc(15_400_000, 1)))).status).toBe(413)
	})
})
