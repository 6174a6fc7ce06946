import { describe, expect, test } from 'vitest'
import { inviteContact } from '@/db/clients/save-contact'
import { saveDraft } from '@/db/proposals/draft'
import { type Publishing, publish } from '@/db/proposals/publish'
import { seasonPage } from '@/db/studio/season-page'
import type { WinterKey } from '@/demo/cast/proposals/proposals'
import { must } from '@/demo/play/must'
import type { AnyPersonKey } from '@/demo/play/stage'
import { everything } from '@/lib/pricing/quote/choice'
import { quote } from '@/lib/pricing/quote/quote'
import { type Draft, emptyDraft } from '@/lib/proposal/draft'
import { addDays, day } from '@/lib/units/day'
import { changesOf, refused } from '../stage/rows'
import { fillDisk, found, stranger, studio, today, utc } from '../stage/studio'
import { stepsOf } from './steps'

const of = studio()
const steps = stepsOf(of)
const { idOf, page } = steps

const publishing = async (key: WinterKey, change: Partial<Publishing> = {}): Promise<Publishing> => ({
	proposal: idOf(key),
	version: (await steps.draft(key)).version,
	once: of.once(),
	...change,
})
const by = async (who: AnyPersonKey | 'nobody' | 'system', what: Publishing, at = of.cast().now) =>
	publish(await of.as(who), what, of.stamp(at))

describe('the first revision', () => {
	test('is one row, its two sides sealed, one line, and a mail to every contact', async () => {
		const what = await publishing('bicycles')
		const { said, did } = await changesOf(of.folder(), () => by('designer', what))
		expect(said).toEqual({ ok: true, number: 1, hash: expect.stringMatching(/^[0-9a-f]{64}$/) })
		expect(did).toEqual({ event: '+1', once: '+1', outbox: '+1', proposal: '~1', revision: '+1', sealed_text: '+2' })
	})

	test('can be read at once by those behind the door', async () => {
		const { hash } = must('bicycles', await by('designer', await publishing('bicycles')))
		expect(await page('bicycles')).toMatchObject({
			hash,
			number: 1,
			before: undefined,
			answer: undefined,
			publishedAt: of.cast().now,
			state: { is: 'waiting for an answer', revision: hash, answerBy: addDays(today, 10) },
			offer: {
				title: 'A rust-red door in January',
				signedBy: 'Isolde Ferncastle',
				studio: 'Sedge & Lantern',
				number: 1,
			},
		})
	})

	test('sets the ledger to the palette of least price', async () => {
		await steps.redraft('unpriced', (draft) => ({
			...draft,
			options: draft.options.map((option, index) =>
				index < 2 ? option : { ...option, pots: draft.options[0]?.pots ?? [] },
			),
		}))
		await by('designer', await publishing('unpriced'))
		const nets = found((await page('unpriced')).offer).options.map(({ prices }) => quote(prices, everything).netCents)
		expect(new Set(nets).size).toBe(2)
		const ledger = await seasonPage(await of.as('designer'), { season: of.cast().seasons.winter, page: 1 }, of.stamp())
		expect(ledger?.rows.find(({ id }) => id === idOf('unpriced'))).toMatchObject({
			palette: '',
			paletteCount: 3,
			valueCents: Math.min(...nets),
		})
	})

	test('is mailed to a contact who looks as to one who approves', async () => {
		const { unpriced } = of.cast().clients
		const invited = {
			name: 'Ysolt Gorsdale',
			address: 'ysolt@gorsdale.example',
			may: 'look',
			client: unpriced.id,
		} as const
		const { person } = must('look', await inviteContact(await of.as('designer'), invited, of.stamp()))
		await steps.redraft('unpriced', (draft) => ({ ...draft, options: draft.options.slice(0, 2) }))
		await by('designer', await publishing('unpriced'))
		const mails = stranger(of.folder(), (sqlite) =>
			sqlite
				.prepare("SELECT person_id FROM outbox WHERE facts LIKE ? AND message = 'proposal published'")
				.pluck()
				.all(`%${idOf('unpriced')}%`),
		)
		expect(mails.toSorted()).toEqual([of.cast().people.unpricedApprover.id, person].toSorted())
	})
})

describe('the next revision', () => {
	const line = async () => {
		const ledger = await seasonPage(await of.as('designer'), { season: of.cast().seasons.winter, page: 1 }, of.stamp())
		return ledger?.rows.find(({ id }) => id === idOf('vet'))
	}

	test('has the next number, stands beside the one before, and is neither seen nor reminded', async () => {
		expect(await line()).toMatchObject({ seenAt: expect.any(String), remindedAt: expect.any(String) })
		const first = await page('vet')
		await steps.redraft('vet', (draft) => ({ ...draft, title: 'Frost and a bow' }))
		must('vet', await by('designer', await publishing('vet')))
		expect(await line()).toMatchObject({ seenAt: null, remindedAt: null, publishedAt: of.cast().now })
		const second = await page('vet')
		expect(second).toMatchObject({ number: 2, offer: { number: 2, title: 'Frost and a bow' } })
		expect(second.before).toEqual(first.offer)
		expect(second.hash).not.toBe(first.hash)
	})

	test('differs in its hash even when nothing else did', async () => {
		const first = await page('vet')
		must('vet', await by('designer', await publishing('vet')))
		expect((await page('vet')).hash).not.toBe(first.hash)
	})

	test.each([
		['inn', 'a change was asked for'],
		['skipped', 'skipped'],
		['withdrawn', 'withdrawn'],
		['chandlery', 'lapsed'],
	] as const)('of %s: %s', async (key, _stood) => {
		await steps.redraft(key, (draft) => ({ ...draft, answerBy: addDays(today, 9) }))
		expect(await by('designer', await publishing(key))).toMatchObject({ ok: true, number: 2 })
		expect(await page(key)).toMatchObject({ state: { is: 'waiting for an answer' }, answer: undefined, number: 2 })
	})

	test('of a yes only once that is opened anew; the yes stays under its own revision', async () => {
		const before = await page('creditUnion')
		await steps.steer('creditUnion', 'reopen')
		await steps.redraft('creditUnion', (draft) => ({ ...draft, answerBy: addDays(today, 9) }))
		expect(await by('designer', await publishing('creditUnion'))).toMatchObject({ ok: true, number: 2 })
		expect((await page('creditUnion')).before).toEqual(before.offer)
		const answers = stranger(of.folder(), (sqlite) =>
			sqlite.prepare('SELECT kind FROM answer WHERE revision_hash = ?').pluck().all(before.hash),
		)
		expect(answers).toEqual(['approval'])
	})
})

describe('is refused, and nothing is written', () => {
	/** The box of one container in the third palette. */
	const anyPot = expect.stringMatching(/^options\.c\.pots\.[0-9a-f-]{36}$/)

	const refuses = async (key: WinterKey, change: Partial<Publishing> = {}, at = of.cast().now) => {
		const what = await publishing(key, change)
		return refused(of.folder(), () => by('designer', what, at))
	}

	test.each([
		['creditUnion', 'already approved'],
		['cancelled', 'cancelled'],
		['installed', 'installed'],
	] as const)('%s: %s', async (key, why) => {
		expect(await refuses(key)).toEqual({ ok: false, why })
	})

	test('a draft that is not ready, with each thing that stops it', async () => {
		expect(await refuses('unpriced')).toMatchObject({
			why: 'not ready',
			problems: [{ at: anyPot }, { at: anyPot }],
		})
	})

	test.each<[string, (draft: Draft) => Draft, string]>([
		['no letter', (draft) => ({ ...draft, letter: '' }), 'letter'],
		['a day to answer by that has passed', (draft) => ({ ...draft, answerBy: addDays(today, -1) }), 'answerBy'],
		['an empty draft', () => emptyDraft({ from: null, to: null, answerBy: null }), 'window.from'],
	])('%s', async (_, change, at) => {
		await steps.redraft('bicycles', change)
		const said = await refuses('bicycles')
		expect(said).toMatchObject({ why: 'not ready' })
		expect('problems' in said && said.problems.map((problem) => problem.at)).toContain(at)
	})

	test('a day to answer by that has passed by the clock in the town', async () => {
		await steps.redraft('bicycles', (draft) => ({ ...draft, answerBy: day('2026-10-09') }))
		expect(await refuses('bicycles', {}, utc('2026-10-10T04:00'))).toMatchObject({ why: 'not ready' })
		expect(await by('designer', await publishing('bicycles'), utc('2026-10-10T03:59'))).toMatchObject({ ok: true })
	})

	test('another version than the one on the desk', async () => {
		const { version } = await steps.draft('bicycles')
		for (const other of [version - 1, version + 1])
			expect(await refuses('bicycles', { version: other })).toEqual({ ok: false, why: 'saved elsewhere' })
	})

	test('what was saved by another hand meanwhile', async () => {
		const what = await publishing('bicycles')
		const { version, draft } = await steps.draft('bicycles')
		await saveDraft(await of.as('designer'), { proposal: idOf('bicycles'), version, draft }, of.stamp())
		const said = await refused(of.folder(), () => by('designer', what))
		expect(said).toEqual({ ok: false, why: 'saved elsewhere' })
	})

	test('a form sent again', async () => {
		const what = await publishing('bicycles')
		must('bicycles', await by('designer', what))
		expect(await refused(of.folder(), () => by('designer', what))).toEqual({ ok: false, why: 'sent before' })
	})

	test.each(['helper', 'bicyclesApprover', 'bakeryViewer', 'nobody', 'system'] as const)('to %s', async (who) => {
		const what = await publishing('bicycles')
		expect(await refused(of.folder(), () => by(who, what))).toEqual({ ok: false, why: 'hidden' })
	})

	test.each(['revision', 'sealed_text', 'once', 'event', 'outbox'])('when %s cannot be written', async (table) => {
		const what = await publishing('bicycles')
		fillDisk(of.folder(), table)
		await refused(of.folder(), () => expect(by('designer', what)).rejects.toThrow('the disk is full'))
	})
})
