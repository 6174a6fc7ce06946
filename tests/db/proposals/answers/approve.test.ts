import { describe, expect, test } from 'vitest'
import { eraseClient } from '@/db/clients/erase'
import { type Approval, approve } from '@/db/proposals/answers/approve'
import { seasonPage } from '@/db/studio/season-page'
import { must } from '@/demo/play/must'
import type { AnyPersonKey } from '@/demo/play/stage'
import { type Quote, quote } from '@/lib/pricing/quote/quote'
import { hash } from '@/lib/record/hash'
import { id } from '@/lib/units/id'
import { changesOf, refused } from '../../stage/rows'
import { fillDisk, found, stranger, studio, utc } from '../../stage/studio'
import { stepsOf } from '../steps'

const of = studio()
const { answering, idOf, page, publish, redraft, steer } = stepsOf(of)

const yes = async (change: Partial<Approval> = {}): Promise<Approval> => ({
	...(await answering('bakery')),
	option: 'a',
	places: {},
	extras: ['lights'],
	leftOut: [],
	purchaseOrder: '',
	...change,
})
const by = async (who: AnyPersonKey | 'nobody' | 'system', approval: Approval, at = of.cast().now) =>
	approve(await of.as(who), approval, of.stamp(at))

/** The cast has given 21 answers before: one each to the 14 of autumn, seven this winter. */
const reference = '2026-0022'

const lastRows = (sql: string) => stranger(of.folder(), (sqlite) => sqlite.prepare(sql).all())

describe('a yes', () => {
	const right = () => of.cast().containers.bakeryRight

	async function given() {
		const approval = await yes({ leftOut: [right()], purchaseOrder: 'B-77' })
		const done = await changesOf(of.folder(), () => by('bakeryApprover', approval))
		return { approval, ...done }
	}

	async function owed(): Promise<Quote> {
		const { offer } = await page('bakery')
		return quote(found(offer?.options[0]).prices, { extras: ['lights'], leftOut: [right()] })
	}

	test('is one answer, one line of the record, its words, and a mail each to the contacts and to the designer', async () => {
		const { said, did } = await given()
		expect(said).toEqual({ ok: true, reference })
		expect(did).toEqual({ answer: '+1', event: '+1', once: '+1', outbox: '+4', proposal: '~1', sealed_text: '+1' })
	})

	test('is read back with who gave it, by which browser, under which number', async () => {
		await given()
		const { name, address } = of.cast().people.bakeryApprover
		const { answer, state } = await page('bakery')
		expect(state.is).toBe('approved')
		expect(answer).toEqual({
			kind: 'approval',
			reference,
			at: of.cast().now,
			by: of.cast().people.bakeryApprover.id,
			word: 'client',
			option: 'a',
			places: {},
			extras: ['lights'],
			leftOut: [right()],
			totalCents: (await owed()).totalCents,
			words: { name, address, browser: 'a test’s browser', purchaseOrder: 'B-77', notes: [] },
		})
	})

	test('stands in the record by hashes and facts alone', async () => {
		const { approval } = await given()
		const [line] = lastRows('SELECT actor, act, object, client_id, facts, sealed FROM event ORDER BY seq DESC LIMIT 1')
		expect(line).toEqual({
			actor: `contact ${of.cast().people.bakeryApprover.id}`,
			act: 'proposal approved',
			object: `proposal ${idOf('bakery')}`,
			client_id: of.cast().clients.bakery.id,
			facts: JSON.stringify({
				extras: ['lights'],
				leftOut: [right()],
				option: 'a',
				reference,
				revision: approval.revision,
				totalCents: (await owed()).totalCents,
			}),
			sealed: expect.stringMatching(/^[0-9a-f]{64}$/),
		})
	})

	test('is mailed as revision 1 of this proposal, to be sent from now on', async () => {
		await given()
		const { people, now } = of.cast()
		const facts = JSON.stringify({ number: 1, proposal: idOf('bakery') })
		const rest = {
			facts,
			created_at: now,
			not_before: now,
			tries: 0,
			leased_until: null,
			sent_at: null,
			dropped_at: null,
		}
		expect(lastRows(`SELECT * FROM outbox WHERE created_at = '${now}' ORDER BY message, rowid`)).toEqual([
			{ id: expect.any(String), message: 'approval received', person_id: people.designer.id, ...rest },
			...[people.bakeryApprover, people.bakerySecondApprover, people.bakeryViewer].map((to) => ({
				id: expect.any(String),
				message: 'approved',
				person_id: to.id,
				...rest,
			})),
		])
	})

	test('sets the ledger to what was chosen', async () => {
		await given()
		const ledger = await seasonPage(await of.as('designer'), { season: of.cast().seasons.winter, page: 1 }, of.stamp())
		expect(ledger?.rows.find(({ id: row }) => row === idOf('bakery'))).toMatchObject({
			state: 'approved',
			group: 'settled',
			answeredAt: of.cast().now,
			valueCents: (await owed()).netCents,
			palette: 'Copper and plum',
			paletteCount: 1,
		})
	})

	test('of three palettes names the one that was chosen', async () => {
		const three = {
			...(await answering('clapboard')),
			option: 'b',
			places: {},
			extras: [],
			leftOut: [],
			purchaseOrder: '',
		}
		must('clapboard', await by('clapboardApprover', three))
		const ledger = await seasonPage(await of.as('designer'), { season: of.cast().seasons.winter, page: 1 }, of.stamp())
		expect(ledger?.rows.find(({ id: row }) => row === idOf('clapboard'))).toMatchObject({
			palette: 'Brass and navy',
			paletteCount: 1,
		})
	})

	test('named twice, an extra and a container count once', async () => {
		must('bakery', await by('bakeryApprover', await yes({ extras: ['lights', 'lights'], leftOut: [right(), right()] })))
		const { answer } = await page('bakery')
		expect(answer).toMatchObject({ extras: ['lights'], leftOut: [right()], totalCents: (await owed()).totalCents })
	})
})

describe('of the offer only what was offered', () => {
	const left = () => of.cast().containers.bakeryLeft
	test.each<[string, () => Partial<Approval>, string]>([
		['another palette', () => ({ option: 'b' }), 'that palette is not offered'],
		['no palette', () => ({ option: '' }), 'that palette is not offered'],
		['an extra of somebody else', () => ({ extras: ['lights', 'berries'] }), 'that extra is not offered'],
		['a container that has to stay', () => ({ leftOut: [left()] }), 'that container may not be left out'],
		[
			'a container of the dentist',
			() => ({ leftOut: [of.cast().containers.dentalLeft] }),
			'that container may not be left out',
		],
	])('%s', async (_, change, why) => {
		const approval = await yes(change())
		expect(await refused(of.folder(), () => by('bakeryApprover', approval))).toEqual({ ok: false, why })
	})

	test('something has to be left', async () => {
		await redraft('bakery', (draft) => ({
			...draft,
			containers: draft.containers.map((each) => ({ ...each, mayLeaveOut: true })),
		}))
		await publish('bakery')
		const { bakeryLeft, bakeryRight, bakeryBox } = of.cast().containers
		const approval = await yes({ extras: [], leftOut: [bakeryLeft, bakeryBox, bakeryRight] })
		const said = await refused(of.folder(), () => by('bakeryApprover', approval))
		expect(said).toEqual({ ok: false, why: 'nothing would be left' })
	})

	test('an extra at a door where nothing is left', async () => {
		const { branchLeft, branchRight } = of.cast().containers
		await steer('creditUnion', 'reopen')
		await redraft('creditUnion', (draft) => ({
			...draft,
			answerBy: draft.window.from,
			containers: draft.containers.map((each) => ({ ...each, mayLeaveOut: true })),
			extras: draft.extras.map((extra) => ({ ...extra, place: of.cast().places.creditUnionBranch })),
		}))
		await publish('creditUnion')
		const choice = {
			option: 'a',
			places: {},
			extras: ['refresh'],
			leftOut: [branchLeft, branchRight],
			purchaseOrder: '',
		}
		const approval = { ...(await answering('creditUnion')), ...choice }
		const said = await refused(of.folder(), () => by('creditUnionApprover', approval))
		expect(said).toEqual({ ok: false, why: 'that extra belongs where everything is left out' })
	})
})

describe('of one revision, the one that stands', () => {
	test('a hash with one digit changed', async () => {
		const { revision, ...rest } = await yes()
		const tampered = hash(revision.replace(/.$/, (digit) => (digit === '0' ? '1' : '0')))
		const said = await refused(of.folder(), () => by('bakeryApprover', { ...rest, revision: tampered }))
		expect(said).toEqual({ ok: false, why: 'a newer revision stands' })
	})

	test('the revision before', async () => {
		const old = await yes()
		await publish('bakery')
		const said = await refused(of.folder(), () => by('bakeryApprover', old))
		expect(said).toEqual({ ok: false, why: 'a newer revision stands' })
		expect(await by('bakeryApprover', await yes())).toMatchObject({ ok: true })
	})

	test('the revision of another client', async () => {
		const { hash: revision } = await page('vet')
		const approval = await yes({ revision })
		const said = await refused(of.folder(), () => by('bakeryApprover', approval))
		expect(said).toEqual({ ok: false, why: 'a newer revision stands' })
	})
})

describe('once', () => {
	test('the second of two is told', async () => {
		const [first, second] = [await yes(), await yes({ extras: ['refresh'] })]
		must('bakery', await by('bakeryApprover', first))
		const said = await refused(of.folder(), () => by('bakerySecondApprover', second))
		expect(said).toEqual({ ok: false, why: 'already approved' })
	})

	test('a form sent again after all was opened anew', async () => {
		const first = await yes()
		must('bakery', await by('bakeryApprover', first))
		await steer('bakery', 'reopen')
		await publish('bakery')
		const again = await yes({ once: first.once })
		const said = await refused(of.folder(), () => by('bakeryApprover', again))
		expect(said).toEqual({ ok: false, why: 'sent before' })
	})
})

describe('while it waits for them', () => {
	const stands = [
		['inn', 'innApprover', 'a change was asked for'],
		['creditUnion', 'creditUnionApprover', 'already approved'],
		['skipped', 'skippedApprover', 'already skipped'],
		['chandlery', 'chandleryApprover', 'lapsed'],
		['withdrawn', 'withdrawnApprover', 'withdrawn'],
		['cancelled', 'cancelledApprover', 'cancelled'],
		['installed', 'installedApprover', 'installed'],
	] as const
	test.each(stands)('%s', async (key, who, why) => {
		const approval = await yes(await answering(key))
		expect(await refused(of.folder(), () => by(who, approval))).toEqual({ ok: false, why })
	})

	test('not before it is published', async () => {
		const approval = await yes({ proposal: idOf('bookshop') })
		const said = await refused(of.folder(), () => by('bookshopApprover', approval))
		expect(said).toEqual({ ok: false, why: 'not published yet' })
	})

	// The bakery is to answer by 9 October, in New York four hours behind UTC until November.
	test.each([
		['2026-10-10T03:59:59.999', true],
		['2026-10-10T04:00:00.000', false],
		['2027-03-01T12:00:00.000', false],
	])('at %s UTC: %s', async (at, isTaken) => {
		const said = await by('bakeryApprover', await yes(), utc(at))
		expect(said).toMatchObject(isTaken ? { ok: true } : { ok: false, why: 'lapsed' })
	})
})

describe('another palette for a place', () => {
	const boathouse = () => of.cast().places.fieldstoneBoathouse
	const mixed = async (change: Partial<Approval> = {}) =>
		yes({ ...(await answering('fieldstone')), places: { [boathouse()]: 'b' }, extras: [], ...change })

	test('is kept with the answer and told by its line, at the total of both; the ledger names both', async () => {
		must('fieldstone', await by('fieldstoneApprover', await mixed()))
		const { answer, offer } = await page('fieldstone')
		const [a, b] = found(offer).options.map(({ prices }) => quote(prices, { extras: [], leftOut: [] }))
		const at = (whole: Quote | undefined, isThere: boolean) =>
			found(whole)
				.lines.filter(({ place }) => (place === boathouse()) === isThere)
				.map(({ cents }) => cents)
		const net = [...at(a, false), ...at(b, true)].reduce((all, each) => all + each, 0)
		expect(answer).toMatchObject({ option: 'a', places: { [boathouse()]: 'b' } })
		expect(answer?.totalCents).toBeGreaterThan(net)
		expect([found(a).totalCents, found(b).totalCents]).not.toContain(answer?.totalCents)
		const [line] = lastRows('SELECT facts FROM event ORDER BY seq DESC LIMIT 1')
		expect(JSON.stringify(line)).toContain(`\\"places\\":{\\"${boathouse()}\\":\\"b\\"}`)
		const [row] = lastRows(`SELECT palette, palette_count AS palettes, value_cents AS value, margin_tenths AS margin
			FROM proposal WHERE id = '${idOf('fieldstone')}'`)
		const named = 'Rust and moss; Copper and plum at Boathouse'
		expect(row).toEqual({ palette: named, palettes: 1, value: net, margin: expect.any(Number) })
	})

	test('the same twice over is one choice, written in one way', async () => {
		const { fieldstone: porch } = of.cast().places
		const places = { [boathouse()]: 'a', [porch]: 'b' }
		must('fieldstone', await by('fieldstoneApprover', await mixed({ option: 'a', places })))
		expect((await page('fieldstone')).answer).toMatchObject({ option: 'b', places: { [boathouse()]: 'a' } })
	})

	test.each<readonly [string, () => Partial<Approval>, string]>([
		[
			'a place of another client',
			() => ({ places: { [of.cast().places.bakery]: 'b' } }),
			'that place is not in the design',
		],
		['a palette that is not offered', () => ({ places: { [boathouse()]: 'z' } }), 'that palette is not offered'],
	])('%s is refused', async (_, change, why) => {
		const approval = await mixed(change())
		expect(await refused(of.folder(), () => by('fieldstoneApprover', approval))).toEqual({ ok: false, why })
	})

	test('where everything is left out is refused', async () => {
		await redraft('fieldstone', (draft) => ({
			...draft,
			containers: draft.containers.map((each) => ({ ...each, mayLeaveOut: true })),
		}))
		await publish('fieldstone')
		const approval = await mixed({ leftOut: [of.cast().containers.boathouseDoor] })
		expect(await refused(of.folder(), () => by('fieldstoneApprover', approval))).toEqual({
			ok: false,
			why: 'that palette belongs where everything is left out',
		})
	})
})

describe('by who may', () => {
	test.each([
		['bakeryViewer', 'forbidden'],
		['designer', 'forbidden'],
		['helper', 'hidden'],
		['dentalApprover', 'hidden'],
		['twoDoors', 'hidden'],
		['nobody', 'hidden'],
		['system', 'hidden'],
	] as const)('%s: %s', async (who, why) => {
		const approval = await yes()
		expect(await refused(of.folder(), () => by(who, approval))).toEqual({ ok: false, why })
	})

	test('of two doors, behind the one where she may', async () => {
		const look = await yes(await answering('fieldstone'))
		const may = await yes({ ...(await answering('vet')), extras: [] })
		expect(await refused(of.folder(), () => by('twoDoors', look))).toEqual({ ok: false, why: 'forbidden' })
		expect(await by('twoDoors', may)).toMatchObject({ ok: true })
	})

	test('a proposal that is not there is told as another client’s', async () => {
		const approval = await yes({ proposal: id<'proposal'>('01999999-0000-7000-8000-00000000000a') })
		expect(await refused(of.folder(), () => by('bakeryApprover', approval))).toEqual({ ok: false, why: 'hidden' })
	})

	test('not by a client who was erased meanwhile: there is nothing there any more', async () => {
		const [approval, contact] = [await yes(), await of.as('bakeryApprover')]
		await eraseClient(await of.as('designer'), of.cast().clients.bakery.id, of.stamp())
		const said = await refused(of.folder(), () => approve(contact, approval, of.stamp()))
		expect(said).toEqual({ ok: false, why: 'hidden' })
	})
})

describe('all of it, or nothing', () => {
	test.each(['answer', 'event', 'once', 'outbox', 'sealed_text', 'proposal'])(
		'when %s cannot be written',
		async (table) => {
			const approval = await yes()
			const act = table === 'proposal' ? 'UPDATE' : 'INSERT'
			fillDisk(of.folder(), table, act)
			await refused(of.folder(), () => expect(by('bakeryApprover', approval)).rejects.toThrow('the disk is full'))
		},
	)
})
