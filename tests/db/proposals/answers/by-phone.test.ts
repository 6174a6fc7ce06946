import { describe, expect, test } from 'vitest'
import { mailedProposal } from '@/db/outbox/mail-facts'
import { type Approval, approve } from '@/db/proposals/answers/approve'
import { askForChange } from '@/db/proposals/answers/ask-for-change'
import { skipSeason } from '@/db/proposals/answers/skip'
import { verify } from '@/db/record/verify'
import { seasonPage } from '@/db/studio/season-page'
import { must } from '@/demo/play/must'
import type { AnyPersonKey } from '@/demo/play/stage'
import { changesOf, refused } from '../../stage/rows'
import { fillDisk, found, stranger, studio, utc } from '../../stage/studio'
import { stepsOf } from '../steps'

const of = studio()
const { answering, idOf, page } = stepsOf(of)
const said = 'Odile Marrowby'

const yes = async (change: Partial<Approval> = {}): Promise<Approval> => ({
	...(await answering('bakery')),
	browser: '',
	option: 'a',
	places: {},
	extras: ['lights'],
	leftOut: [],
	purchaseOrder: 'B-78',
	said,
	...change,
})
const by = async (who: AnyPersonKey | 'nobody' | 'system', what: Approval, at = of.cast().now) =>
	approve(await of.as(who), what, of.stamp(at))

const mailed = () =>
	stranger(of.folder(), (sqlite) =>
		sqlite
			.prepare('SELECT message, person_id FROM outbox WHERE created_at = ? ORDER BY message, rowid')
			.raw()
			.all(of.cast().now),
	)
const isWhole = async () => (await verify(await of.as('system')))?.broken

describe('a yes by phone', () => {
	test('is one answer, marked as the studio’s word, with who said so', async () => {
		const what = await yes()
		const { said: answered, did } = await changesOf(of.folder(), () => by('designer', what))
		expect(answered).toEqual({ ok: true, reference: '2026-0022' })
		expect(did).toEqual({ answer: '+1', event: '+1', once: '+1', outbox: '+3', proposal: '~1', sealed_text: '+1' })
		const { designer } = of.cast().people
		const { answer, state } = await page('bakery')
		expect(state.is).toBe('approved')
		expect(answer).toMatchObject({ kind: 'approval', by: designer.id, word: 'studio', option: 'a', extras: ['lights'] })
		expect(answer?.words).toEqual({
			name: designer.name,
			address: designer.address,
			said,
			browser: '',
			purchaseOrder: 'B-78',
			notes: [],
		})
	})

	test('stands in the record under the designer, never the client, and the record is whole', async () => {
		must('bakery', await by('designer', await yes()))
		const line = stranger(of.folder(), (sqlite) =>
			sqlite.prepare('SELECT actor, act, facts FROM event ORDER BY seq DESC LIMIT 1').get(),
		)
		expect(line).toEqual({
			actor: `staff ${of.cast().people.designer.id}`,
			act: 'proposal approved',
			facts: expect.stringContaining('"word":"studio"'),
		})
		expect(await isWhole()).toBeNull()
	})

	test('changed to the client’s own behind the record’s back, is found out', async () => {
		must('bakery', await by('designer', await yes()))
		stranger(of.folder(), (sqlite) => {
			const triggers = sqlite.prepare("SELECT name FROM sqlite_master WHERE type = 'trigger' AND tbl_name = 'answer'")
			for (const name of triggers.pluck().all()) sqlite.exec(`DROP TRIGGER ${String(name)}`)
			sqlite.exec("UPDATE answer SET word = 'client' WHERE reference = '2026-0022'")
		})
		expect(await isWhole()).not.toBeNull()
	})

	test('is mailed to all the client’s contacts as a receipt; who took it down hears nothing', async () => {
		must('bakery', await by('designer', await yes()))
		const { people } = of.cast()
		expect(mailed()).toEqual(
			[people.bakeryApprover, people.bakerySecondApprover, people.bakeryViewer].map(({ id }) => ['approved', id]),
		)
		const to = async (person: typeof people.designer.id) =>
			mailedProposal(await of.as('system'), { proposal: idOf('bakery'), number: 1, person }, of.stamp())
		expect(await to(people.bakeryApprover.id)).toMatchObject({
			isForStudio: false,
			isOwn: false,
			answer: { word: 'studio' },
		})
		expect(await to(people.designer.id)).toMatchObject({ isForStudio: true })
	})

	test('says so on the season page', async () => {
		must('bakery', await by('designer', await yes()))
		const ledger = await seasonPage(await of.as('designer'), { season: of.cast().seasons.winter, page: 1 }, of.stamp())
		const rows = found(ledger).rows.filter(({ isByPhone }) => isByPhone)
		expect(rows.map(({ id }) => id)).toEqual([idOf('bakery')])
	})
})

describe('other answers by phone', () => {
	test('a wish stands with its words, and goes to who may approve as a receipt', async () => {
		const asked = { ...(await answering('bakery')), said, notes: [{ part: 'whole', words: 'A little taller.' }] }
		must('bakery', await askForChange(await of.as('designer'), asked, of.stamp()))
		const { answer, state } = await page('bakery')
		expect(state.is).toBe('change asked for')
		expect(answer).toMatchObject({
			word: 'studio',
			words: { said, notes: [{ about: 'The whole design', words: 'A little taller.' }] },
		})
		const { bakeryApprover, bakerySecondApprover } = of.cast().people
		expect(mailed()).toEqual([bakeryApprover, bakerySecondApprover].map(({ id }) => ['change asked for', id]))
		expect(await isWhole()).toBeNull()
	})

	test('so does a skip', async () => {
		const skipped = { ...(await answering('bakery')), said, why: 'They are away.' }
		must('bakery', await skipSeason(await of.as('designer'), skipped, of.stamp()))
		expect((await page('bakery')).answer).toMatchObject({ kind: 'skip', word: 'studio', words: { said } })
		expect(mailed()).toHaveLength(2)
		expect(await isWhole()).toBeNull()
	})
})

describe('whose word it is cannot be turned about', () => {
	test.each(['bakeryApprover', 'bakeryViewer', 'helper', 'dentalApprover', 'nobody', 'system'] as const)(
		'%s takes nothing down',
		async (who) => {
			const what = await yes()
			expect(await refused(of.folder(), () => by(who, what))).toEqual({ ok: false, why: 'hidden' })
		},
	)

	test('the designer gives no answer as the client', async () => {
		const { said: _, ...what } = await yes()
		expect(await refused(of.folder(), () => by('designer', what))).toEqual({ ok: false, why: 'forbidden' })
	})
})

describe('it is held to what an answer is held to', () => {
	test.each<[string, () => Partial<Approval>, string]>([
		['another palette', () => ({ option: 'z' }), 'that palette is not offered'],
		['an extra that is not offered', () => ({ extras: ['berries'] }), 'that extra is not offered'],
		[
			'a container that has to stay',
			() => ({ leftOut: [of.cast().containers.bakeryLeft] }),
			'that container may not be left out',
		],
	])('%s', async (_, change, why) => {
		const what = await yes(change())
		expect(await refused(of.folder(), () => by('designer', what))).toEqual({ ok: false, why })
	})

	test('not after the client’s own, nor after the day to answer by', async () => {
		const { said: _, ...own } = await yes()
		const what = await yes()
		const late = await refused(of.folder(), () => by('designer', what, utc('2026-10-10T12:00')))
		expect(late).toEqual({ ok: false, why: 'lapsed' })
		must('bakery', await by('bakeryApprover', own))
		expect(await refused(of.folder(), () => by('designer', what))).toEqual({ ok: false, why: 'already approved' })
	})

	test('once for a form', async () => {
		const first = await yes()
		must('bakery', await by('designer', first))
		expect(await refused(of.folder(), () => by('designer', first))).toEqual({ ok: false, why: 'already approved' })
	})

	test.each(['answer', 'event', 'outbox'])('leaves nothing when %s cannot be written', async (table) => {
		fillDisk(of.folder(), table)
		const what = await yes()
		await refused(of.folder(), () => expect(by('designer', what)).rejects.toThrow('the disk is full'))
	})
})
