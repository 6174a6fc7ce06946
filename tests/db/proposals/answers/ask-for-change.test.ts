import { describe, expect, test } from 'vitest'
import { askForChange } from '@/db/proposals/answers/ask-for-change'
import { seasonPage } from '@/db/studio/season-page'
import { must } from '@/demo/play/must'
import type { AnyPersonKey } from '@/demo/play/stage'
import type { AskedNote } from '@/lib/proposal/offer/parts'
import { changesOf, refused } from '../../stage/rows'
import { fillDisk, stranger, studio, utc } from '../../stage/studio'
import { stepsOf } from '../steps'

const of = studio()
const { answering, idOf, page, publish } = stepsOf(of)

type Asked = Parameters<typeof askForChange>[1]
const asked = async (notes: readonly AskedNote[], change: Partial<Asked> = {}): Promise<Asked> => ({
	...(await answering('clapboard')),
	notes,
	...change,
})
const by = async (who: AnyPersonKey | 'nobody' | 'system', ask: Asked, at = of.cast().now) =>
	askForChange(await of.as(who), ask, of.stamp(at))

const lower = () => ({
	part: `container ${of.cast().containers.clapboardRight}`,
	words: 'Lower on the right, for the bell.',
})
const rose = { part: 'option a', words: 'Is there a rose that is less pink?' }
const lights = { part: 'extra lights', words: 'White, not warm.' }
const whole = { part: 'whole', words: 'All of it a week later?' }

describe('a change asked for', () => {
	test('is one answer with its words sealed, one line, and a mail to the designer', async () => {
		const ask = await asked([lower(), rose])
		const { said, did } = await changesOf(of.folder(), () => by('clapboardApprover', ask))
		expect(said).toMatchObject({ ok: true })
		expect(did).toEqual({ answer: '+1', event: '+1', once: '+1', outbox: '+1', proposal: '~1', sealed_text: '+1' })
		const [mail] = stranger(of.folder(), (sqlite) =>
			sqlite.prepare('SELECT message, person_id FROM outbox WHERE created_at = ?').all(of.cast().now),
		)
		expect(mail).toEqual({ message: 'change asked for', person_id: of.cast().people.designer.id })
	})

	test('keeps each note under the name of its part, in the order in which they were written', async () => {
		must('clapboard', await by('clapboardApprover', await asked([lower(), rose, lights, whole])))
		const { answer, state } = await page('clapboard')
		expect(state.is).toBe('change asked for')
		expect(answer).toMatchObject({ kind: 'change asked for', option: null, extras: [], leftOut: [], totalCents: null })
		expect(answer?.words?.notes).toEqual([
			{ about: 'Right of the steps', words: lower().words },
			{ about: 'Palette “Rose and pewter”', words: rose.words },
			{ about: 'Extra “Two strings of warm lights”', words: lights.words },
			{ about: 'The whole design', words: whole.words },
		])
	})

	test('shows its first note in the ledger, in the group that waits for us', async () => {
		must('clapboard', await by('clapboardApprover', await asked([rose, whole])))
		const ledger = await seasonPage(await of.as('designer'), { season: of.cast().seasons.winter, page: 1 }, of.stamp())
		expect(ledger?.rows.find(({ id }) => id === idOf('clapboard'))).toMatchObject({
			group: 'waiting for us',
			note: rose.words,
		})
	})

	test('keeps no words in the record itself', async () => {
		must('clapboard', await by('clapboardApprover', await asked([rose])))
		const open = stranger(of.folder(), (sqlite) => [
			...sqlite.prepare('SELECT * FROM event').raw().all(),
			...sqlite.prepare('SELECT * FROM answer').raw().all(),
			...sqlite.prepare('SELECT * FROM outbox').raw().all(),
			...sqlite.prepare('SELECT * FROM proposal').raw().all(),
		])
		expect(JSON.stringify(open)).not.toContain(rose.words)
	})
})

describe('is refused, and nothing is written', () => {
	const refuses = async (who: AnyPersonKey | 'nobody' | 'system', ask: Asked, at = of.cast().now) =>
		refused(of.folder(), () => by(who, ask, at))

	test.each([
		['a container of the dentist', () => `container ${of.cast().containers.dentalLeft}`],
		['a fourth palette', () => 'option d'],
		['an extra that is not there', () => 'extra refresh'],
		['nothing known', () => 'toString'],
	])('about %s, beside a note that is right', async (_, part) => {
		const ask = await asked([rose, { part: part(), words: 'This one.' }])
		expect(await refuses('clapboardApprover', ask)).toEqual({ ok: false, why: 'that part is not in the design' })
	})

	test('of the revision before', async () => {
		const ask = await asked([rose])
		await publish('clapboard')
		expect(await refuses('clapboardApprover', ask)).toEqual({ ok: false, why: 'a newer revision stands' })
	})

	test('twice', async () => {
		must('clapboard', await by('clapboardApprover', await asked([rose])))
		expect(await refuses('clapboardApprover', await asked([whole]))).toEqual({
			ok: false,
			why: 'a change was asked for',
		})
	})

	test('by a form sent again after the next revision', async () => {
		const first = await asked([rose])
		must('clapboard', await by('clapboardApprover', first))
		await publish('clapboard')
		const again = await asked([rose], { once: first.once })
		expect(await refuses('clapboardApprover', again)).toEqual({ ok: false, why: 'sent before' })
	})

	// To be answered by 11 October in New York.
	test('after its day', async () => {
		expect(await refuses('clapboardApprover', await asked([rose]), utc('2026-10-12T04:00'))).toEqual({
			ok: false,
			why: 'lapsed',
		})
	})

	test.each([
		['clapboardViewer', 'forbidden'],
		['designer', 'forbidden'],
		['helper', 'hidden'],
		['bakeryApprover', 'hidden'],
		['nobody', 'hidden'],
		['system', 'hidden'],
	] as const)('to %s: %s', async (who, why) => {
		expect(await refuses(who, await asked([rose]))).toEqual({ ok: false, why })
	})

	test('when its mail cannot be kept', async () => {
		const ask = await asked([rose])
		fillDisk(of.folder(), 'outbox')
		await refused(of.folder(), () => expect(by('clapboardApprover', ask)).rejects.toThrow('the disk is full'))
	})
})
