import { afterEach, describe, expect, test, vi } from 'vitest'
import type { ProposalPaper } from '@/app/documents/pdf/proposal/input'
import { approvedScenes } from '@/app/documents/pdf/proposal/scenes'
import { proposalPdf } from '@/app/server/pdf/proposal'
import type { Offer } from '@/lib/proposal/offer/offer'
import { offerView } from '@/lib/proposal/offer/offer-view'
import { receipt } from '@/lib/proposal/offer/receipt'
import { made, offerOf, placeId } from '../../../lib/proposal/sample'
import { hardNames } from '../hard-names'
import { qpdf } from '../seal/judges'
import { bare, pagesOf } from '../text'
import { approval, proposalPaper } from './sample'

// The mark of a bundler that has no server side: there is no bundler here.
vi.mock('server-only', () => ({}))

/** The renderer says on the console what it could not lay out. */
const complaints = vi.spyOn(console, 'warn')
afterEach(() => {
	expect(complaints.mock.calls).toEqual([])
	complaints.mockClear()
})

const whole = async (input: ProposalPaper = proposalPaper()) => bare((await pagesOf(await proposalPdf(input))).join(''))
const picturesIn = (bytes: Buffer) => bytes.toString('latin1').split('/Subtype /Image').length - 1

/** The string of lights is drawn as one. */
const lit = (offer: Offer): Offer => ({
	...offer,
	extras: offer.extras.map((extra) => ({
		...extra,
		lines: extra.lines.map((line) =>
			line.look === undefined || extra.key !== 'lights' ? line : { ...line, look: { ...line.look, form: 'lights' } },
		),
	})),
})
const withoutPictures = (offer: Offer): Offer => ({
	...offer,
	containers: offer.containers.map(({ vessel: _, ...rest }) => rest),
})

describe('the file of an approved proposal', () => {
	test('is the same bytes for the same approval, and others for another, or on other paper', async () => {
		const first = await proposalPdf(proposalPaper())
		expect((await proposalPdf(proposalPaper())).equals(first)).toBe(true)
		const others = [{ approval: { ...approval, leftOut: [] } }, { paper: 'A4' }] as const
		for (const its of others) expect((await proposalPdf(proposalPaper(offerOf(), its))).equals(first)).toBe(false)
	})

	test('has a table of its objects that a strict reader finds nothing wrong with', async () => {
		expect(qpdf(await proposalPdf(proposalPaper())).says).toContain('No syntax or stream encoding errors found')
	})

	test('says who approved what and when, and every line of the price with its tax', async () => {
		const text = await whole()
		const record = receipt(offerOf(), approval)
		expect(record?.rows).toHaveLength(8)
		// A word joiner keeps a line from breaking, and is not drawn.
		for (const { label, value } of record?.rows ?? [])
			expect(text).toContain(bare(`${label} ${value.replaceAll('\u2060', '')}`))
		const lines = [...(record?.price.rows ?? []), ...(record?.price.taxes ?? [])]
		expect(text).toContain(bare(lines.map(({ label, amount }) => `${label} ${amount}`).join('')))
		expect(text).toContain(bare(`Total ${record?.price.total} To be paid: ${record?.price.due}.`))
	})

	test('has the title, the letter, each palette that was taken, what is in each pot, and the cautions', async () => {
		const text = await whole()
		const { offer, options, potGroups, cautions } = offerView(offerOf(), undefined, approval)
		for (const each of [offer.title, offer.letter, `${offer.signedBy}, ${offer.studio}`, ...cautions])
			expect(text).toContain(bare(each))
		for (const { name, at, palette } of options)
			expect(text).toContain(bare(`${name} At ${at.join()} ${palette.map((chip) => chip.name + chip.echoes).join('')}`))
		for (const { names, layers } of potGroups) {
			expect(text).toContain(bare(names.join(' · ')))
			for (const { place, words } of layers) expect(text).toContain(bare(place + words))
		}
	})

	test('shows nothing of a palette that was not taken, of an extra that was not added, of a pot that stays out', async () => {
		const text = await whole(proposalPaper(offerOf(), { approval: { ...approval, places: {}, extras: [] } }))
		expect(text).toContain(bare('Copper and plum one'))
		expect(text).not.toMatch(/Brassandnavy|Wreath|Stringoflights/)
		expect(text.slice(text.indexOf('Whatisineachpot'))).not.toContain('Righturn')
	})

	test('says on each page of which approval and revision it is', async () => {
		const input = proposalPaper()
		const pages = await pagesOf(await proposalPdf(input), { withFoot: true })
		for (const [index, page] of pages.entries()) {
			expect(page).toContain(`Approved design 2026-0012, revision 2, hash ${input.hash.slice(0, 8)}`)
			expect(page).toContain(`${index + 1} of ${pages.length}`)
		}
	})

	test('has no cost in it: none of the cost book of what was approved', async () => {
		const text = await whole()
		const { inputs } = made()
		const costs = [...new Set(inputs.flatMap(({ job }) => [...JSON.stringify(job).matchAll(/"cents":(\d{3,})/g)]))]
		expect(costs.length).toBeGreaterThan(3)
		for (const [, cents = ''] of costs) expect(text).not.toContain(`$${cents.slice(0, -2)}.${cents.slice(-2)}`)
	})
})

describe('its pictures', () => {
	test('are one of each wall, with what stands before it', async () => {
		const scenes = approvedScenes(proposalPaper())
		expect(scenes.map(({ caption }) => caption)).toEqual([
			'Front door: Copper and plum, by day',
			'Side door: Brass and navy, by day',
		])
		expect(scenes.map(({ scene }) => scene.pots.map(({ name }) => name))).toEqual([['Left urn'], ['Long box']])
		expect(picturesIn(await proposalPdf(proposalPaper()))).toBe(2)
		const text = await whole()
		for (const { caption } of scenes)
			expect(text).toContain(bare(`${caption}. A drawing, to scale; natural material varies.`))
	})

	test('and one more in the evening where lights are part of it', async () => {
		const input = proposalPaper(lit(offerOf()))
		expect(approvedScenes(input).map(({ scene, caption }) => [scene.hour, caption])).toEqual([
			['day', 'Front door: Copper and plum, by day'],
			['day', 'Side door: Brass and navy, by day'],
			['evening', 'Side door: Brass and navy, in the evening'],
		])
		expect(picturesIn(await proposalPdf(input))).toBe(3)
	})

	test('are none of a revision from before there were pictures', async () => {
		const input = proposalPaper(withoutPictures(offerOf()))
		expect(picturesIn(await proposalPdf(input))).toBe(0)
		expect(await whole(input)).toContain(bare('Winter at the bakery Reference 2026-0012'))
	})

	test('are named by the palette where there is one wall', () => {
		const offer = offerOf()
		const one = { ...offer, places: offer.places.filter(({ id }) => id === placeId(1)) }
		const [first] = approvedScenes(proposalPaper(one, { approval: { ...approval, places: {} } }))
		expect(first?.caption).toBe('Copper and plum, by day')
	})
})

test('a palette that was not offered is a broken promise', async () => {
	const input = proposalPaper(offerOf(), { approval: { ...approval, option: 'z' } })
	await expect(proposalPdf(input)).rejects.toThrow('z was not offered')
})

test.each(hardNames)('%s comes out letter by letter, wherever it stands', async (name) => {
	const offer = { ...withoutPictures(offerOf()), client: name, studio: name, signedBy: name, title: name, letter: name }
	const text = await whole(proposalPaper(offer, { approval: { ...approval, by: `by ${name}` } }))
	expect(text.split(bare(name)).length).toBeGreaterThanOrEqual(6)
	expect(text).not.toContain('□')
})

test('signs that the letters lack are boxes, and the file says so', async () => {
	const offer = withoutPictures(offerOf())
	const said = bare('□ stands for a sign that the letters of this file lack.')
	expect(await whole(proposalPaper({ ...offer, client: '李小龍' }))).toContain(said)
	expect(await whole(proposalPaper(offer))).not.toContain(said)
})

describe('what is too long for a page', () => {
	/** No two parts of it are alike, so that none can be lost unseen. */
	const long = Array.from({ length: 1250 }, (_, n) => `m${String(n).padStart(5, '0')}by`).join('')
	const offer = withoutPictures(offerOf())

	test.each([
		['a client’s name', { ...offer, client: long }],
		['a letter', { ...offer, letter: long }],
		['a title', { ...offer, title: long }],
		['a container’s name', { ...offer, containers: offer.containers.map((each) => ({ ...each, name: long })) }],
		['an extra’s words', { ...offer, extras: offer.extras.map((each) => ({ ...each, words: long })) }],
	])('%s: goes on over pages, whole', async (_name, its) => {
		const text = await whole(proposalPaper(its))
		expect(text).toContain(long)
		expect(text).toContain(bare('Local codes and licensed practice come first.'))
	})
})
