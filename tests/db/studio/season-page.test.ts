import { describe, expect, test, vi } from 'vitest'
import { approve } from '@/db/proposals/answers/approve'
import { type SeasonRow, seasonPage } from '@/db/studio/season-page'
import { clientsWithout, listSeasons, planSeason } from '@/db/studio/seasons'
import { must } from '@/demo/play/must'
import { groups } from '@/lib/season/group'
import { everyRow, type LedgerAsk, type Sort } from '@/lib/season/ledger-ask'
import { day } from '@/lib/units/day'
import { id } from '@/lib/units/id'
import { stepsOf } from '../proposals/steps'
import { changesOf, refused } from '../stage/rows'
import { found, stranger, studio, utc } from '../stage/studio'

const of = studio()
const { answering } = stepsOf(of)
const ledger = async (page = 1, at = of.cast().now, season = of.cast().seasons.winter) =>
	found(await seasonPage(await of.as('designer'), { season, page }, of.stamp(at)))

const states = ['waiting for an answer', 'drafting', 'approved', 'change asked for'] as const

const days = ['2026-10-04', '2026-10-06', '2026-10-30'] as const

function proposalOf(n: number): Record<string, string | number | null> {
	const state = found(states[n % states.length])
	const out = {
		number: 1,
		hash: `hash ${n}`,
		answerBy: found(days[Math.floor(n / states.length) % 3]),
		cents: 10_000 + n,
	}
	const none = { number: 0, hash: null, answerBy: null, cents: null }
	return { id: `proposal ${n}`, client: `client ${n}`, state, ...(state === 'drafting' ? none : out) }
}

/** 120 clients more, 30 a state; a third each is to answer by the 4th, the 6th and the 30th of the month. */
function addMany(): void {
	stranger(of.folder(), (sqlite) => {
		const client = sqlite.prepare("INSERT INTO client VALUES (?, 'household', ?, 30, NULL, NULL, '', 'now', NULL)")
		const proposal = sqlite.prepare(
			`INSERT INTO proposal (id, client_id, season_id, state, revision_number, revision_hash, answer_by, palette, palette_count, palette_hexes, value_cents, margin_tenths, created_at)
			VALUES (:id, :client, :season, :state, :number, :hash, :answerBy, '', 1, '', :cents, 500, 'now')`,
		)
		const add = (n: number) => {
			client.run(`client ${n}`, `Household ${String(n).padStart(3, '0')}`)
			proposal.run({ ...proposalOf(n), season: of.cast().seasons.winter })
		}
		sqlite.transaction(() => Array.from({ length: 120 }, (_, n) => add(n)))()
	})
}

const sum = (numbers: readonly number[]) => numbers.reduce((all, each) => all + each, 0)

describe('the ledger of a season', () => {
	test('who is waited for comes first, then who waits for us, then what is settled; the nearest day first', async () => {
		const { rows } = await ledger()
		const order = rows.map(({ group }) => groups.indexOf(group))
		expect(order).toEqual(order.toSorted())
		const waiting = rows.filter(({ group }) => group === 'waiting for them')
		expect(waiting.map(({ name }) => name)).toEqual([
			'Kittiwell Veterinary Clinic',
			'Lindquay Dental Practice',
			'Marrowby Bakery',
			'The Merrowin household',
			'The Pellwick household',
			'The Tavendry household',
		])
	})

	test('a row says what is needed to know whom to call', async () => {
		const row = (await ledger()).rows.find(({ id: each }) => each === of.cast().proposals.inn)
		expect(row).toMatchObject({
			client: of.cast().clients.inn.id,
			name: 'The Three Hawsers Inn',
			kind: 'business',
			place: 'Front and terrace',
			wall: '#88837a',
			containers: 3,
			paletteCount: 2,
			state: 'change asked for',
			note: expect.stringMatching(/^Taller at the steps/),
			answerBy: '2026-10-12',
		})
	})

	test('the next morning in the town, what was due is lapsed and settled, and no row was written for it', async () => {
		const vet = async (at: string) =>
			(await ledger(1, utc(at))).rows.find(({ id: each }) => each === of.cast().proposals.vet)
		expect(await vet('2026-10-08T03:59')).toMatchObject({ state: 'waiting for an answer', group: 'waiting for them' })
		const late = await refused(of.folder(), () => vet('2026-10-08T04:00'))
		expect(late).toMatchObject({ state: 'lapsed', group: 'settled' })
	})

	test('shows the note of a change only while it is asked for', async () => {
		const { rows } = await ledger()
		expect(rows.filter(({ note }) => note !== '').map(({ name }) => name)).toEqual(['The Three Hawsers Inn'])
	})

	test('is not there for others, nor without its season', async () => {
		const none = id<'season'>('01999999-0000-7000-8000-00000000000a')
		for (const who of ['helper', 'bakeryApprover', 'nobody'] as const)
			expect(
				await seasonPage(await of.as(who), { season: of.cast().seasons.winter, page: 1 }, of.stamp()),
			).toBeUndefined()
		expect(await seasonPage(await of.as('designer'), { season: none, page: 1 }, of.stamp())).toBeUndefined()
	})
})

describe('what is asked for', () => {
	const asked = async (given: Partial<LedgerAsk>, page = 1) =>
		found(
			await seasonPage(
				await of.as('designer'),
				{ season: of.cast().seasons.winter, page, ask: { ...everyRow, ...given } },
				of.stamp(),
			),
		)
	const names = async (given: Partial<LedgerAsk>) => (await asked(given)).rows.map(({ name }) => name)

	test('of a group, of a state, of a kind', async () => {
		expect((await asked({ show: 'waiting for them' })).rows.map(({ group }) => group)).toEqual(
			Array.from({ length: 6 }, () => 'waiting for them'),
		)
		expect((await asked({ show: 'lapsed' })).rows.map(({ state }) => state)).toEqual(['lapsed'])
		const { rows } = await asked({ kind: 'household' })
		expect(new Set(rows.map(({ kind }) => kind))).toEqual(new Set(['household']))
		expect(rows.length).toBeLessThan((await ledger()).rows.length)
	})

	test('by what a name or a palette holds, in capitals or not; a sign of the search is a sign', async () => {
		expect(await names({ name: 'BAKERY' })).toEqual(['Marrowby Bakery'])
		expect(await names({ palette: 'copper' })).toContain('Marrowby Bakery')
		expect(await names({ name: '%' })).toEqual([])
		expect(await names({ name: '_' })).toEqual([])
		expect(await names({ name: "'); DROP TABLE client; --" })).toEqual([])
	})

	test('capitals beyond ASCII are found as well', async () => {
		stranger(of.folder(), (sqlite) =>
			sqlite.prepare('UPDATE client SET name = ? WHERE id = ?').run('Éclair & Søn', of.cast().clients.bakery.id),
		)
		expect(await names({ name: 'éclair' })).toEqual(['Éclair & Søn'])
	})

	test('is counted and summed, beside the totals of all', async () => {
		const all = await ledger()
		const some = await asked({ show: 'waiting for them', kind: 'business' })
		expect(some.totals).toEqual(all.totals)
		expect(all.asked).toBeUndefined()
		expect(some.asked).toEqual({
			count: some.rows.length,
			valueCents: sum(some.rows.map(({ valueCents }) => valueCents ?? 0)),
		})
		expect((await asked({ name: 'nobody at all' })).asked).toEqual({ count: 0, valueCents: 0 })
	})

	test.each<[Sort, (row: SeasonRow) => number | string]>([
		['name', ({ name }) => name.toLowerCase()],
		['value', ({ valueCents }) => -(valueCents ?? -1)],
		['margin', ({ marginTenths }) => marginTenths ?? Number.POSITIVE_INFINITY],
		['days waited', ({ state, publishedAt }) => (state === 'waiting for an answer' ? String(publishedAt) : '~')],
	])('within each group in the order of %s', async (sort, of) => {
		const { rows } = await asked({ sort })
		expect(new Set(rows.map(({ id }) => id))).toEqual(new Set((await ledger()).rows.map(({ id }) => id)))
		for (const group of groups) {
			const own = rows.filter((row) => row.group === group).map(of)
			expect(own).toEqual(own.toSorted((a, b) => (a < b ? -1 : a > b ? 1 : 0)))
		}
	})

	test('asks as many questions however many there are', async () => {
		const count = async () => {
			const prepare = vi.spyOn(found(globalThis.doorsillDatabase).sqlite, 'prepare')
			await asked({ name: 'h', sort: 'value' })
			const { length } = prepare.mock.calls
			prepare.mockRestore()
			return length
		}
		// Who asks is known by a statement that is built once.
		await of.as('designer')
		const few = await count()
		addMany()
		expect([await count(), few]).toEqual([few, 5])
	})
})

describe('137 clients', () => {
	test('come 50 a page, each once, in one order over all pages', async () => {
		addMany()
		const pages = await Promise.all([1, 2, 3, 4].map((page) => ledger(page)))
		expect(pages.map(({ rows }) => rows.length)).toEqual([50, 50, 37, 0])
		expect(pages.map((each) => each.pages)).toEqual([3, 3, 3, 3])
		const rows = pages.flatMap((each) => each.rows)
		expect(new Set(rows.map((row) => row.id)).size).toBe(137)
		const order = rows.map(({ group }) => groups.indexOf(group))
		expect(order).toEqual(order.toSorted())
	})

	test('their totals are those of all pages, on each', async () => {
		addMany()
		const pages = await Promise.all([1, 2, 3].map((page) => ledger(page)))
		const rows = pages.flatMap((each) => each.rows)
		const [first, ...others] = pages.map(({ totals }) => totals)
		for (const other of others) expect(other).toEqual(first)
		for (const { state, count, valueCents, firstAnswerBy } of found(first)) {
			const own = rows.filter((row) => row.state === state)
			const due = own.flatMap(({ answerBy }) => answerBy ?? []).toSorted()
			expect([count, valueCents, firstAnswerBy]).toEqual([
				own.length,
				sum(own.map((row) => row.valueCents ?? 0)),
				due[0] ?? null,
			])
		}
		expect(Object.fromEntries(found(first).map(({ state, count }) => [state, count]))).toEqual({
			'waiting for an answer': 20 + 6,
			lapsed: 10 + 1,
			drafting: 30 + 3,
			approved: 30 + 2,
			'change asked for': 30 + 1,
			skipped: 1,
			withdrawn: 1,
			cancelled: 1,
			installed: 1,
		})
	})

	test('take as many questions to the database as 17 do', async () => {
		const designer = await of.as('designer')
		const asked = async (page: number) => {
			const prepare = vi.spyOn(found(globalThis.doorsillDatabase).sqlite, 'prepare')
			await seasonPage(designer, { season: of.cast().seasons.winter, page }, of.stamp())
			const { length } = prepare.mock.calls
			prepare.mockRestore()
			return length
		}
		const few = await asked(1)
		addMany()
		expect([await asked(1), await asked(2), await asked(3)]).toEqual([few, few, few])
		expect(few).toBeLessThanOrEqual(4)
	})
})

describe('clients without a proposal for a season', () => {
	const without = async (season = of.cast().seasons.winter) => clientsWithout(await of.as('designer'), season)

	test('this winter the newcomer; in autumn four', async () => {
		expect(await without()).toEqual({
			count: 1,
			first: [{ id: of.cast().clients.newcomer.id, name: 'The Fennaway household' }],
		})
		const autumn = await without(of.cast().seasons.autumn)
		expect(autumn.count).toBe(Object.keys(of.cast().clients).length - Object.keys(of.cast().autumn).length)
		expect(autumn.first).toHaveLength(autumn.count)
	})

	test('the first fifty by name, and how many there are', async () => {
		addMany()
		const { count, first } = await without(of.cast().seasons.autumn)
		expect([count, first.length]).toEqual([124, 50])
		expect(first.map(({ name }) => name)).toEqual(first.map(({ name }) => name).toSorted())
	})

	test('none that is archived', async () => {
		stranger(of.folder(), (sqlite) =>
			sqlite
				.prepare('UPDATE client SET archived_at = ? WHERE id = ?')
				.run(of.cast().now, of.cast().clients.newcomer.id),
		)
		expect(await without()).toEqual({ count: 0, first: [] })
	})
})

describe('a season', () => {
	const spring = {
		quarter: 'spring',
		year: 2027,
		windowFrom: day('2027-04-12'),
		windowTo: day('2027-04-23'),
		answerBy: day('2027-03-19'),
	} as const

	test('planned, stands first in the list', async () => {
		const designer = await of.as('designer')
		const { said, did } = await changesOf(of.folder(), () => planSeason(designer, spring, of.stamp()))
		expect(did).toEqual({ season: '+1', event: '+1' })
		expect((await listSeasons(designer)).map(({ quarter }) => quarter)).toEqual(['spring', 'winter', 'autumn'])
		expect((await listSeasons(designer))[0]).toEqual({ id: must('spring', said).id, ...spring })
	})

	test.each([
		['a season that is there', { quarter: 'winter', year: 2026 }, 'there already'],
		['an answer after the first day', { answerBy: day('2027-04-13') }, 'dates'],
		['a window that ends before it begins', { windowTo: day('2027-04-11') }, 'dates'],
	] as const)('not %s', async (_, change, why) => {
		const designer = await of.as('designer')
		const said = await refused(of.folder(), () => planSeason(designer, { ...spring, ...change }, of.stamp()))
		expect(said).toEqual({ ok: false, why })
	})

	test('on one day alone may be', async () => {
		const oneDay = { ...spring, windowTo: spring.windowFrom, answerBy: spring.windowFrom }
		expect(await planSeason(await of.as('designer'), oneDay, of.stamp())).toMatchObject({ ok: true })
	})
})

test('the ledger moves a client to settled with the yes', async () => {
	const approval = {
		...(await answering('bakery')),
		option: 'a',
		places: {},
		extras: [],
		leftOut: [],
		purchaseOrder: '',
	}
	const before = (await ledger()).totals.find(({ state }) => state === 'waiting for an answer')
	must('bakery', await approve(await of.as('bakeryApprover'), approval, of.stamp()))
	const after = (await ledger()).totals.find(({ state }) => state === 'waiting for an answer')
	expect((before?.count ?? 0) - (after?.count ?? 0)).toBe(1)
})
