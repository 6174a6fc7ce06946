import { existsSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import sharp from 'sharp'
import { afterAll, beforeAll, beforeEach, describe, expect, test, vi } from 'vitest'
import { approve } from '@/db/proposals/answers/approve'
import { readCover } from '@/db/proposals/pictures/read-cover'
import { remind } from '@/db/proposals/remind'
import { start } from '@/db/start/start'
import type { WinterKey } from '@/demo/cast/proposals/proposals'
import { must } from '@/demo/play/must'
import { describeScene } from '@/lib/picture/words/describe-scene'
import { coverOf as coverOfOffer } from '@/lib/proposal/offer/cover'
import { type Shown, sceneOf } from '@/lib/proposal/offer/scene-of'
import { stepsOf } from '../../db/proposals/steps'
import { emptyStudio, found, later, stranger, studio } from '../../db/stage/studio'
import { anew } from '../anew'
import { leaveNothing } from './leave-nothing'
import { type MailServer, openMailServer } from './mail-server'

// The mark of a bundler that has no server side: there is no bundler here.
vi.mock('server-only', () => ({}))

const of = studio()
const { answering, idOf, page, publish, redraft } = stepsOf(of)
const hour = 3_600_000

let server: MailServer
beforeAll(async () => {
	server = await openMailServer()
})
afterAll(() => server.close())

const logIn = (folder: string) => join(folder, 'site.log')
const log = () => readFileSync(logIn(of.folder()), 'utf8')

/** All that waits goes out from a process that starts anew; the mails that came of it. */
async function sent(at = of.cast().now, before: () => void = () => undefined, folder = of.folder()) {
	server.mails.length = 0
	await anew(at, { SMTP_URL: server.url, LOG_FILE: logIn(folder) }, async () => {
		const { sendDue } = await import('@/app/server/mail/sender')
		before()
		while ((await sendDue()) > 0);
	})
	return [...server.mails]
}

beforeEach(() => leaveNothing(of.folder()))

const again = async (key: WinterKey, at = of.cast().now) =>
	must(key, await remind(await of.as('designer'), { proposal: idOf(key), again: true, once: of.once() }, of.stamp(at)))

async function approvedBakery() {
	const leftOut = [of.cast().containers.bakeryRight]
	const approval = {
		...(await answering('bakery')),
		option: 'a',
		places: {},
		extras: ['lights'],
		leftOut,
		purchaseOrder: '',
	}
	must('bakery', await approve(await of.as('bakeryApprover'), approval, of.stamp()))
	return approval
}

type Mail = MailServer['mails'][number]
const isCover = (cid: string | undefined) => /\.cover@/.test(cid ?? '')
/** What heads a mail that asks for an answer; the rest are designs. */
const coverOf = ({ attachments }: Mail) => attachments.find(({ cid }) => isCover(cid))
const designsOf = ({ attachments }: Mail) => attachments.filter(({ cid }) => !isCover(cid))
const textOf = (html: string, name: string) =>
	[...html.matchAll(new RegExp(`<img[^>]* ${name}="([^"]*)"`, 'g'))].map(([, value = '']) =>
		value.replaceAll('&quot;', '"').replaceAll('&#x27;', '’').replaceAll('&amp;', '&'),
	)
function shownIn({ html }: Mail) {
	const words = textOf(html || '', 'alt')
	const each = textOf(html || '', 'src').map((from, at) => ({ from, words: words[at] ?? '' }))
	const designs = each.filter(({ from }) => !isCover(from))
	return { from: designs.map(({ from }) => from), words: designs.map((of) => of.words), all: each }
}
/** As mailparser hands out a page whose pictures it did not put in: by Content-ID. */
const sizesOf = async (mail: Mail) => {
	const read = await Promise.all(designsOf(mail).map(({ content }) => sharp(content).metadata()))
	return read.map(({ format, width, height }) => `${format} ${width} × ${height}`)
}
const bytesOf = ({ attachments }: Mail) => attachments.map(({ content }) => content.toString('base64'))

const all = { place: '', extras: [], leftOut: [], hour: 'day', measure: 'none' } as const
/** Side by side the first pot is seen near by. */
const nearWordsFor = async (key: WinterKey, option: string) => {
	const scene = found(sceneOf(found((await page(key)).offer), { ...all, option }))
	return describeScene({ ...scene, pots: scene.pots.slice(0, 1) })
}
const wordsFor = async (key: WinterKey, shown: Partial<Shown> & Pick<Shown, 'option'>) =>
	describeScene(found(sceneOf(found((await page(key)).offer), { ...all, ...shown })))

/** The markers of a JPEG up to its pixels (ITU-T T.81, table B.1): words, dates and places would be APP1 and on, or COM. */
function markersIn(jpeg: Buffer): number[] {
	const found: number[] = []
	for (let at = 2; found.at(-1) !== 0xda; at += jpeg.readUInt16BE(at + 2) + 2)
		found.push(jpeg.readUInt16BE(at) - 0xff00)
	return found
}
const app0 = 0xe0
const mayHoldWords = (marker: number) => (marker > app0 && marker <= 0xef) || marker === 0xfe

describe('a mail that asks for an answer', () => {
	test('shows the one palette before the client’s wall, named by Content-ID and told in words', async () => {
		await again('vet')
		const [mail] = await sent()
		const { raw, text } = found(mail)
		expect(await sizesOf(found(mail))).toEqual(['jpeg 1200 × 667'])
		const [{ cid, contentDisposition, contentType } = {}] = designsOf(found(mail))
		expect({ contentDisposition, contentType }).toEqual({ contentDisposition: 'inline', contentType: 'image/jpeg' })
		const { from, words } = shownIn(found(mail))
		expect(from).toEqual([`cid:${cid}`])
		expect(words).toEqual([`Frost and violet. ${await wordsFor('vet', { option: 'a' })}`])
		expect(raw.length).toBeLessThan(250_000)
		expect(text).not.toContain(await wordsFor('vet', { option: 'a' }))
	})

	test('shows several side by side, each with its name, none before the others', async () => {
		await again('fieldstone')
		const [mail] = await sent()
		expect(await sizesOf(found(mail))).toEqual(['jpeg 400 × 500', 'jpeg 400 × 500', 'jpeg 400 × 500'])
		const { from, words } = shownIn(found(mail))
		expect(from).toEqual(designsOf(found(mail)).map(({ cid }) => `cid:${cid}`))
		expect(new Set(from).size).toBe(3)
		const { options } = found((await page('fieldstone')).offer)
		expect(words).toEqual(
			await Promise.all(options.map(async ({ key, name }) => `${name}. ${await nearWordsFor('fieldstone', key)}`)),
		)
		expect(found(mail).raw.length).toBeLessThan(250_000)
	})

	test('shows a newer revision as it was published, and nothing of what is drafted since', async () => {
		const bare = (name: string) => async () =>
			redraft('stucco', (draft) => ({
				...draft,
				options: draft.options.map((option) => ({
					...option,
					name,
					pots: option.pots.map((pot) => ({ ...pot, lines: pot.lines.slice(0, 1) })),
				})),
			}))
		await publish('stucco')
		const [before] = await sent()
		await bare('Not yet')()
		await again('stucco', later(of.cast().now, hour))
		const [reminded] = await sent(later(of.cast().now, hour))
		expect(bytesOf(found(reminded))).toEqual(bytesOf(found(before)))
		expect(shownIn(found(reminded))).toEqual(shownIn(found(before)))
		await publish('stucco', later(of.cast().now, hour))
		const [revised] = await sent(later(of.cast().now, hour))
		expect(found(revised).subject).toMatch(/revised$/)
		expect(bytesOf(found(revised))).not.toEqual(bytesOf(found(before)))
		expect(shownIn(found(revised)).words).toEqual([expect.stringMatching(/^Not yet\. /)])
	})
})

describe('the cover that heads it', () => {
	test('names season, palettes and studio in words, and is shown before all else', async () => {
		await again('fieldstone')
		const [mail] = await sent()
		const { offer } = await page('fieldstone')
		const { options, studio } = found(offer)
		const [head] = shownIn(found(mail)).all
		expect(head).toEqual({
			from: `cid:${coverOf(found(mail))?.cid}`,
			words: `Winter 2026–27. ${options.map(({ name }) => name).join(', ')}. ${studio}`,
		})
		const { format, width, height } = await sharp(found(coverOf(found(mail))).content).metadata()
		expect([format, width, height]).toEqual(['png', 1200, 630])
	})

	test('heads no receipt and nothing that the studio gets', async () => {
		await approvedBakery()
		const mails = await sent()
		expect(mails.map((mail) => coverOf(mail))).toEqual([undefined, undefined, undefined, undefined])
	})

	test('stands behind the link as well, at the address of its key', async () => {
		await again('vet')
		const [mail] = await sent()
		const [, link = ''] = /(http\S+\/proposal\/\S+)/.exec(found(mail).text ?? '') ?? []
		const key = new URL(link).searchParams.get('cover') ?? ''
		const cover = await readCover(await of.as('nobody'), key)
		expect(cover).toEqual(coverOfOffer(found((await page('vet')).offer)))
	})
})

describe('a receipt', () => {
	test('shows what was approved: with what was added, without what was left out', async () => {
		const { option, extras, leftOut } = await approvedBakery()
		const [mail] = await sent()
		const told = await wordsFor('bakery', { option, extras, leftOut })
		expect(told).not.toBe(await wordsFor('bakery', { option }))
		expect(shownIn(found(mail)).words).toEqual([`Copper and plum. ${told}`])
		expect(told).toContain('two containers')
		expect(told).toContain('warm light strings')
	})

	test('is the same for all who get one, bytes and names', async () => {
		await approvedBakery()
		const mails = await sent()
		const seen = mails.map((mail) => JSON.stringify([bytesOf(mail), shownIn(mail)]))
		expect(mails.length).toBe(4)
		expect(new Set(seen).size).toBe(1)
	})

	test('shows each place, by its name', async () => {
		stranger(of.folder(), (sqlite) =>
			sqlite.exec(
				`UPDATE outbox SET sent_at = NULL, leased_until = NULL WHERE message = 'approved'
					AND json_extract(facts, '$.proposal') = '${idOf('creditUnion')}'`,
			),
		)
		const [mail] = await sent()
		const { places } = found((await page('creditUnion')).offer)
		expect(places.length).toBe(2)
		expect(shownIn(found(mail)).words).toEqual(
			await Promise.all(
				places.map(async ({ id, name }) => `${name}. ${await wordsFor('creditUnion', { place: id, option: 'a' })}`),
			),
		)
		for (const { name } of places) expect(found(mail).html).toContain(`>${name}</p>`)
		expect(found(mail).raw.length).toBeLessThan(250_000)
	})
})

describe('a picture in a mail', () => {
	test('carries colours and nothing else: no words, no date, no place', async () => {
		await again('clapboard')
		const [mail] = await sent()
		const markers = designsOf(found(mail)).map(({ content }) => markersIn(content))
		expect(markers.map((each) => each.length > 3)).toEqual([true, true, true])
		expect(markers.flat().filter(mayHoldWords)).toEqual([])
	})

	test('that cannot be drawn keeps no mail back: it goes without, and the log tells', async () => {
		await again('vet')
		const [mail] = await sent(of.cast().now, () => sharp.block({ operation: ['VipsForeignLoadSvg'] }))
		expect(found(mail).attachments).toEqual([])
		expect(found(mail).html).not.toContain('<img')
		expect(found(mail).text).toContain('See the design and answer')
		expect(log()).toContain('"act":"mail without pictures"')
		expect(log()).not.toMatch(/@/)
	})
})

describe('a revision from before there were pictures', () => {
	const { folder } = emptyStudio()

	test('goes without one, and nothing is wrong', async () => {
		const sql = readFileSync(join(import.meta.dirname, '..', '..', 'fixtures', 'db', '2.sql'), 'utf8')
		stranger(folder(), (sqlite) => sqlite.exec(sql))
		start(folder())
		stranger(folder(), (sqlite) =>
			sqlite.exec(
				"UPDATE outbox SET sent_at = NULL, dropped_at = NULL, leased_until = NULL WHERE message = 'reminder'",
			),
		)
		const mails = await sent(of.cast().now, () => undefined, folder())
		expect(mails.length).toBeGreaterThan(0)
		expect(mails.map(({ attachments }) => attachments.length)).toEqual(mails.map(() => 0))
		expect(mails.filter(({ html }) => String(html).includes('<img'))).toEqual([])
		// Only what goes wrong is written there.
		expect(existsSync(logIn(folder()))).toBe(false)
	})
})
