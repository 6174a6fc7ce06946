import { describe, expect, test } from 'vitest'
import { read } from '@/lib/forms/read'
import { beginForm, planForm, publishForm, remindForm, steerForm } from '@/lib/forms/season-forms'

const uuid = (n: number) => `00000000-0000-7000-8000-00000000d${String(n).padStart(3, '0')}`
const errorsOf = (result: ReturnType<typeof read>) => (result.ok ? {} : result.errors)

describe('a season planned', () => {
	const plan = {
		once: uuid(1),
		quarter: 'winter',
		year: '2026',
		answerBy: '2026-10-23',
		windowFrom: '2026-11-09',
		windowTo: '2026-12-04',
	}

	test('in order: answers, the first install, the last', () => {
		expect(read(planForm, plan)).toEqual({ ok: true, value: { ...plan, year: 2026 } })
	})

	test('all of it may fall on one day', () => {
		const oneDay = { answerBy: '2026-11-09', windowFrom: '2026-11-09', windowTo: '2026-11-09' }
		expect(read(planForm, { ...plan, ...oneDay }).ok).toBe(true)
	})

	test.each([
		{
			name: 'an end before the beginning',
			more: { windowTo: '2026-11-08' },
			says: { windowTo: 'It would end before it begins.' },
		},
		{
			name: 'answers after the first install',
			more: { answerBy: '2026-11-10' },
			says: { answerBy: 'Answers would come after the first install.' },
		},
		{ name: 'another century', more: { year: '1926' }, says: { year: 'Give a year such as 2026.' } },
		{ name: 'a year in two figures', more: { year: '26' }, says: { year: 'Give a year such as 2026.' } },
		{ name: 'a fifth season', more: { quarter: 'monsoon' }, says: { quarter: 'Choose a season.' } },
		{
			name: 'a day that is none',
			more: { windowFrom: '2026-11-31' },
			says: { windowFrom: 'Choose a day of the calendar.' },
		},
	])('refuses $name', ({ more, says }) => {
		expect(errorsOf(read(planForm, { ...plan, ...more }))).toEqual(says)
	})
})

describe('steps of a proposal', () => {
	test('begun for a client and a season', () => {
		const begin = { once: uuid(2), client: uuid(3), season: uuid(4) }
		expect(read(beginForm, begin)).toEqual({ ok: true, value: begin })
		expect(read(beginForm, { ...begin, total: '1' }).ok).toBe(false)
	})

	test.each([
		{ name: 'once', more: {}, is: { page: 2, again: false } },
		{ name: 'again', more: { again: 'yes' }, is: { page: 2, again: true } },
	])('reminded $name', ({ more, is }) => {
		const result = read(remindForm, { once: uuid(5), proposal: uuid(6), season: uuid(7), page: '2', ...more })
		expect(result.ok && result.value).toMatchObject(is)
	})

	test.each(['-1', '1e3', '100000', '', '1.5'])('of no page “%s”', (page) => {
		expect(read(remindForm, { once: uuid(5), proposal: uuid(6), season: uuid(7), page }).ok).toBe(false)
	})

	test('published by the version that was read', () => {
		const publish = { once: uuid(8), proposal: uuid(9), version: '14' }
		expect(read(publishForm, publish)).toEqual({ ok: true, value: { ...publish, version: 14 } })
		expect(errorsOf(read(publishForm, { ...publish, version: '14a' }))).toEqual({ version: 'Open the proposal again.' })
	})

	test.each(['withdraw', 'reopen', 'cancel', 'install'])('steered: %s', (step) => {
		const steer = { once: uuid(10), proposal: uuid(11), step, reason: ' the client moved ', remains: '120.50' }
		const result = read(steerForm, steer)
		expect(result.ok && result.value).toEqual({ ...steer, reason: 'the client moved', remains: 12_050 })
	})

	test.each([
		{ step: 'reopen', says: { reason: 'Say why: the reason is kept in the record.' } },
		{
			step: 'cancel',
			says: {
				reason: 'Say why: the reason is kept in the record.',
				remains: 'Say what remains due: 0 where nothing does.',
			},
		},
		{ step: 'withdraw', says: {} },
		{ step: 'install', says: {} },
	])('$step without a reason', ({ step, says }) => {
		expect(
			errorsOf(read(steerForm, { once: uuid(10), proposal: uuid(11), step, reason: ' \n ', remains: '' })),
		).toEqual(says)
	})

	test.each([
		['', 'Say what remains due: 0 where nothing does.'],
		['-5', 'Give an amount such as 12.50, to the cent.'],
		['12.505', 'Give an amount such as 12.50, to the cent.'],
		['nothing', 'Give an amount such as 12.50, to the cent.'],
	])('cancelled with “%s” remaining due', (remains, says) => {
		const steer = { once: uuid(10), proposal: uuid(11), step: 'cancel', reason: 'They moved.', remains }
		expect(errorsOf(read(steerForm, steer))).toEqual({ remains: says })
	})

	test.each(['approve', 'publish', 'skip', 'lapse', ''])('never steered: “%s”', (step) => {
		expect(read(steerForm, { once: uuid(10), proposal: uuid(11), step, reason: '', remains: '' }).ok).toBe(false)
	})
})
