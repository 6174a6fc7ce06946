import { describe, expect, test } from 'vitest'
import { type Answering, mayAnswer } from '@/db/proposals/answers/open'
import { skipSeason } from '@/db/proposals/answers/skip'
import { must } from '@/demo/play/must'
import type { AnyPersonKey } from '@/demo/play/stage'
import { day } from '@/lib/units/day'
import { changesOf, refused } from '../../stage/rows'
import { fillDisk, studio, utc } from '../../stage/studio'
import { stepsOf } from '../steps'

const of = studio()
const { answering, idOf, page, publish, redraft } = stepsOf(of)

const why = 'We are in the south until April.'
const by = async (who: AnyPersonKey | 'nobody' | 'system', skipped: Answering & { why: string }, at = of.cast().now) =>
	skipSeason(await of.as(who), skipped, of.stamp(at))

describe('a season skipped', () => {
	test('is one answer, one line, and a mail to the designer; the value of the offer stays', async () => {
		const skipped = { ...(await answering('stucco')), why }
		const { said, did } = await changesOf(of.folder(), () => by('stuccoApprover', skipped))
		expect(said).toMatchObject({ ok: true })
		expect(did).toEqual({ answer: '+1', event: '+1', once: '+1', outbox: '+1', proposal: '~1', sealed_text: '+1' })
		const { answer, state } = await page('stucco')
		expect(state.is).toBe('skipped')
		expect(answer).toMatchObject({ kind: 'skip', option: null, totalCents: null })
		expect(answer?.words?.notes).toEqual([{ about: 'whole', words: why }])
	})

	test('needs no reason', async () => {
		must('stucco', await by('stuccoApprover', { ...(await answering('stucco')), why: '' }))
		expect((await page('stucco')).answer?.words?.notes).toEqual([])
	})

	// Wrenholt is five hours behind UTC in December: half past eight in the evening there is the next year here.
	test.each([
		['2027-01-01T01:30', '2026-0022'],
		['2027-01-01T05:00', '2027-0022'],
	])('at %s of UTC is numbered %s, in the year of the town', async (at, reference) => {
		await redraft('stucco', (draft) => ({
			...{ ...draft, answerBy: day('2027-01-02') },
			window: { from: day('2027-01-04'), to: day('2027-01-15') },
		}))
		await publish('stucco')
		const said = await by('stuccoApprover', { ...(await answering('stucco')), why }, utc(at))
		expect(said).toEqual({ ok: true, reference })
	})

	test('can be offered anew, by another revision', async () => {
		must('stucco', await by('stuccoApprover', { ...(await answering('stucco')), why }))
		await publish('stucco')
		expect(await page('stucco')).toMatchObject({ number: 2, answer: undefined, state: { is: 'waiting for an answer' } })
	})
})

describe('is refused, and nothing is written', () => {
	test('twice', async () => {
		const skipped = { ...(await answering('stucco')), why }
		must('stucco', await by('stuccoApprover', skipped))
		const said = await refused(of.folder(), () => by('stuccoApprover', skipped))
		expect(said).toEqual({ ok: false, why: 'already skipped' })
	})

	test('of the revision before', async () => {
		const skipped = { ...(await answering('stucco')), why }
		await publish('stucco')
		const said = await refused(of.folder(), () => by('stuccoApprover', skipped))
		expect(said).toEqual({ ok: false, why: 'a newer revision stands' })
	})

	test('by a form sent again after the next revision', async () => {
		const first = { ...(await answering('stucco')), why }
		must('stucco', await by('stuccoApprover', first))
		await publish('stucco')
		const again = { ...(await answering('stucco')), why, once: first.once }
		expect(await refused(of.folder(), () => by('stuccoApprover', again))).toEqual({ ok: false, why: 'sent before' })
	})

	// To be answered by 10 October in New York.
	test('after its day', async () => {
		const skipped = { ...(await answering('stucco')), why }
		const said = await refused(of.folder(), () => by('stuccoApprover', skipped, utc('2026-10-11T04:00')))
		expect(said).toEqual({ ok: false, why: 'lapsed' })
	})

	test.each([
		['designer', 'forbidden'],
		['helper', 'hidden'],
		['vetApprover', 'hidden'],
		['nobody', 'hidden'],
		['system', 'hidden'],
	] as const)('to %s: %s', async (who, no) => {
		const skipped = { ...(await answering('stucco')), why }
		expect(await refused(of.folder(), () => by(who, skipped))).toEqual({ ok: false, why: no })
	})

	test('to one who may look: forbidden', async () => {
		const skipped = { ...(await answering('clapboard')), why }
		const said = await refused(of.folder(), () => by('clapboardViewer', skipped))
		expect(said).toEqual({ ok: false, why: 'forbidden' })
	})

	test('when its mail cannot be kept', async () => {
		const skipped = { ...(await answering('stucco')), why }
		fillDisk(of.folder(), 'outbox')
		await refused(of.folder(), () => expect(by('stuccoApprover', skipped)).rejects.toThrow('the disk is full'))
	})
})

describe('whether an answer may be given at all is asked before its form is read', () => {
	test.each([
		['stuccoApprover', null],
		['designer', { ok: false, why: 'forbidden' }],
		['bakeryApprover', { ok: false, why: 'hidden' }],
		['nobody', { ok: false, why: 'hidden' }],
	] as const)('%s', async (who, no) => {
		expect(await mayAnswer(await of.as(who), idOf('stucco'), of.stamp())).toEqual(no)
	})

	test('also when it is closed: the form itself is told why', async () => {
		expect(await mayAnswer(await of.as('withdrawnApprover'), idOf('withdrawn'), of.stamp())).toBeNull()
	})
})
