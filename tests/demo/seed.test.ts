import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { z } from 'zod'
import { priceDraft } from '@/db/proposals/desk/price-draft'
import { readDraft } from '@/db/proposals/draft'
import { readOffer } from '@/db/proposals/read-offer'
import { verify } from '@/db/record/verify'
import { seasonPage } from '@/db/studio/season-page'
import { viewerOf } from '@/db/viewer'
import { clients } from '@/demo/cast/clients'
import { winterProposals } from '@/demo/cast/proposals/proposals'
import { studio } from '@/demo/cast/studio'
import { keysOf } from '@/demo/play/keys'
import type { Seeded } from '@/demo/seed'
import type { Viewer } from '@/lib/access/viewer'
import { addDays, day } from '@/lib/units/day'
import type { ProposalId } from '@/lib/units/id'
import { found, type Played, played, rowsIn } from './stage'

const today = day('2026-10-06')

let of: Played
let cast: Seeded
let designer: Viewer

beforeAll(async () => {
	of = await played(today)
	cast = of.cast
	designer = await viewerOf(cast.people.designer.id)
})
afterAll(() => of.end())

const ledger = async (season = cast.seasons.winter) =>
	found(await seasonPage(designer, { season, page: 1 }, { at: cast.now })).rows
const rowOf = async (key: keyof Seeded['proposals']) =>
	found((await ledger()).find(({ id }) => id === cast.proposals[key]))
const offerTo = async (id: ProposalId) => found(await readOffer(designer, id, { at: cast.now }))
const deskOf = async (id: ProposalId) => {
	const { draft } = found(await readDraft(designer, id, { at: cast.now }))
	return found(await priceDraft(designer, { proposal: id, draft }, { at: cast.now }))
}

describe('the winter of the cast', () => {
	test.each([
		['bakery', 'waiting for an answer', 'waiting for them'],
		['dental', 'waiting for an answer', 'waiting for them'],
		['vet', 'waiting for an answer', 'waiting for them'],
		['clapboard', 'waiting for an answer', 'waiting for them'],
		['fieldstone', 'waiting for an answer', 'waiting for them'],
		['stucco', 'waiting for an answer', 'waiting for them'],
		['inn', 'change asked for', 'waiting for us'],
		['bookshop', 'drafting', 'waiting for us'],
		['bicycles', 'drafting', 'waiting for us'],
		['unpriced', 'drafting', 'waiting for us'],
		['creditUnion', 'approved', 'settled'],
		['approved', 'approved', 'settled'],
		['skipped', 'skipped', 'settled'],
		['chandlery', 'lapsed', 'settled'],
		['withdrawn', 'withdrawn', 'settled'],
		['cancelled', 'cancelled', 'settled'],
		['installed', 'installed', 'settled'],
	] as const)('%s: %s', async (key, state, group) => {
		expect(await rowOf(key)).toMatchObject({ client: cast.clients[key].id, state, group })
	})

	test('is all that was begun; the newcomer has none', async () => {
		expect(await ledger()).toHaveLength(keysOf(winterProposals).length)
		expect(keysOf(clients).filter((key) => !(key in cast.proposals))).toEqual(['newcomer'])
	})

	test.each([
		['bakery', 3, true, 1],
		['dental', 3, false, 1],
		['vet', 1, true, 1],
		['clapboard', 5, true, 3],
		['fieldstone', 4, true, 3],
		['stucco', 4, false, 1],
	] as const)('%s is due in %i days; seen: %s; palettes: %i', async (key, left, isSeen, palettes) => {
		const row = await rowOf(key)
		expect(row.answerBy).toBe(addDays(today, left))
		expect(row.seenAt !== null).toBe(isSeen)
		expect(row.paletteCount).toBe(palettes)
	})

	test('the vet alone was reminded, yesterday', async () => {
		const reminded = (await ledger()).filter(({ remindedAt }) => remindedAt !== null)
		expect(reminded.map(({ id, remindedAt }) => [id, remindedAt?.slice(0, 10)])).toEqual([
			[cast.proposals.vet, addDays(today, -1)],
		])
	})
})

describe('single stories', () => {
	test('the bakery: two pots of which one may stay away, a box, lights and a refresh', async () => {
		const { offer } = await offerTo(cast.proposals.bakery)
		expect(offer?.containers.map(({ id, mayLeaveOut }) => [id, mayLeaveOut])).toEqual([
			[cast.containers.bakeryLeft, false],
			[cast.containers.bakeryRight, true],
			[cast.containers.bakeryBox, false],
		])
		expect(offer?.extras.map(({ key, lines }) => [key, lines.map(({ count, unit }) => `${count} ${unit}`)])).toEqual([
			['lights', ['2 string']],
			['refresh', []],
		])
	})

	test('the inn asked for two changes, one to an urn and one to the whole', async () => {
		const { answer, offer } = await offerTo(cast.proposals.inn)
		expect(answer?.words?.notes.map(({ about }) => about)).toEqual(['Left urn at the steps', 'The whole design'])
		expect(answer?.words?.notes[0]?.words).toMatch(/^Taller at the steps/)
		expect(offer?.options.map(({ prices }) => prices.parts.map(({ is, cents }) => [is, cents]))).toEqual([
			[
				['extra', 4500],
				['season', 96_000],
			],
			[
				['extra', 4500],
				['season', 96_000],
				['supplement', 6000],
			],
		])
	})

	test('the credit union pays no tax, less five per cent, for six containers at two doors', async () => {
		const { offer, answer } = await offerTo(cast.proposals.creditUnion)
		expect(offer?.containers).toHaveLength(6)
		expect(offer?.places).toHaveLength(2)
		expect(offer?.options[0]?.prices).toMatchObject({ discountPercent: 5, payer: { exemptCertificate: 'EX-40217-W' } })
		expect(answer).toMatchObject({ kind: 'approval', words: { purchaseOrder: 'PO-3318' } })
	})

	test('the Brackwaters approved their second revision, with the lights that they had asked for', async () => {
		const { number, before, offer, answer } = await offerTo(cast.proposals.approved)
		expect(number).toBe(2)
		expect([before?.extras.length, offer?.extras.length]).toEqual([0, 1])
		expect(answer).toMatchObject({ kind: 'approval', extras: ['lights'] })
	})

	test('one contact has two doors, and may approve behind one of them', async () => {
		const { id } = cast.people.twoDoors
		const viewer = await viewerOf(id)
		expect(viewer).toMatchObject({ is: 'contact', person: id })
		expect(viewer.is === 'contact' && [...viewer.clients]).toEqual([
			[cast.clients.vet.id, 'approve'],
			[cast.clients.fieldstone.id, 'look'],
		])
	})

	test('the helper is staff, and no designer', async () => {
		expect(await viewerOf(cast.people.helper.id)).toMatchObject({ is: 'staff', role: 'helper' })
	})

	test.each([
		['bookshop', []],
		['bicycles', []],
		['unpriced', ['options.c.pots', 'options.c.pots']],
	] as const)('what stops the draft of %s: %j', async (key, at) => {
		expect(
			(await deskOf(cast.proposals[key])).problems.map((problem) => problem.at.split('.').slice(0, 3).join('.')),
		).toEqual(at)
	})
})

describe('the autumn before', () => {
	test('is past: all in but the bookshop, which skipped it', async () => {
		const rows = await ledger(cast.seasons.autumn)
		expect(rows.filter(({ state }) => state !== 'installed').map(({ id, state }) => [id, state])).toEqual([
			[cast.autumn.bookshop, 'skipped'],
		])
		expect(rows).toHaveLength(keysOf(cast.autumn).length)
		expect(rows.length).toBeGreaterThan(keysOf(clients).length / 2)
	})
})

describe('margins', () => {
	test('nothing that was published is below the floor, nor beyond what a client would pay', async () => {
		const published = [...(await ledger()), ...(await ledger(cast.seasons.autumn))].filter(
			({ state }) => state !== 'drafting',
		)
		expect(published.length).toBeGreaterThan(20)
		const odd = published.filter(({ marginTenths: margin }) => margin === null || margin < 450 || margin > 600)
		expect(odd.map(({ name, marginTenths }) => [name, marginTenths])).toEqual([])
	})

	test('the bookshop alone has an option in need of mending, and it says so', async () => {
		const ids = [...Object.values(cast.proposals), ...Object.values(cast.autumn)]
		const thin: string[] = []
		for (const id of ids) {
			const { options, problems } = await deskOf(id)
			const isEmpty = (key: string) => problems.some(({ at }) => at.startsWith(`options.${key}.pots.`))
			if (options.some(({ key, mend }) => mend.length > 0 && !isEmpty(key))) thin.push(id)
		}
		expect(thin).toEqual([cast.proposals.bookshop])
	})
})

describe('the record', () => {
	test('holds from the first line to the last', async () => {
		const whole = found(await verify(designer))
		expect(whole.broken).toBeNull()
		expect(whole.lines).toBeGreaterThan(300)
		expect(whole.erased).toBe(0)
	})

	test('goes forward in time and ends before today, by day in the town', () => {
		const line = z.tuple([z.int(), z.string(), z.string(), z.string()]).rest(z.unknown())
		const lines = (rowsIn(of.folder).event ?? []).map((row) => line.parse(JSON.parse(row)))
		const times = lines.toSorted(([a], [b]) => a - b).map(([, , , at]) => at)
		expect(times.toSorted()).toEqual(times)
		expect((times.at(-1) ?? '').slice(0, 10) < today).toBe(true)
		const hours = times.map((at) =>
			Number(new Date(at).toLocaleString('en-GB', { hour: '2-digit', timeZone: studio.timeZone })),
		)
		expect([Math.min(...hours), Math.max(...hours)]).toEqual([9, 17])
	})
})
