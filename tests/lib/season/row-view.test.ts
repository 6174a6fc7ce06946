import { describe, expect, test } from 'vitest'
import { moneyFormat } from '@/lib/format/money'
import { kept } from '@/lib/proposal/state'
import { type RowFacts, type RowView, rowView } from '@/lib/season/row-view'
import { cents } from '@/lib/units/cents'
import { type Day, day, type Moment, moment } from '@/lib/units/day'

const zone = 'America/New_York'
const money = moneyFormat('USD', { cents: false })
const on = (text: string): Moment => moment(new Date(text))

const facts: RowFacts = {
	state: 'waiting for an answer',
	publishedAt: on('2026-10-01T14:00:00Z'),
	answeredAt: null,
	seenAt: null,
	remindedAt: null,
	undeliveredAt: null,
	answerBy: day('2026-10-16'),
	palette: 'Copper and plum',
	paletteCount: 1,
	valueCents: cents(61_700),
	marginTenths: 523,
	note: '',
	isByPhone: false,
	remainsCents: null,
}

const view = (more: Partial<RowFacts>, today: Day = day('2026-10-09')) =>
	rowView({ ...facts, ...more }, today, zone, money)

describe('a row of the ledger', () => {
	test.each<{ name: string; more: Partial<RowFacts>; is: Partial<RowView> }>([
		{
			name: 'out for eight days, seven left',
			more: {},
			is: { waiting: '8 days', left: '7 days left', isSoon: false, more: 'not seen yet', remindedOn: '' },
		},
		{
			name: 'a yes by phone says so',
			more: { state: 'approved', answeredAt: on('2026-10-03T14:00:00Z'), isByPhone: true },
			is: { more: 'answered in 2 days, by phone' },
		},
		{
			name: 'a wish by phone says so',
			more: { state: 'change asked for', answeredAt: on('2026-10-03T14:00:00Z'), note: 'Lower.', isByPhone: true },
			is: { more: '“Lower.”, by phone' },
		},
		{
			name: 'what was opened again says nothing of the answer before',
			more: { state: 'drafting', isByPhone: true },
			is: { more: '' },
		},
		{
			name: 'three days left is soon',
			more: { answerBy: day('2026-10-12') },
			is: { left: '3 days left', isSoon: true },
		},
		{ name: 'four is not', more: { answerBy: day('2026-10-13') }, is: { left: '4 days left', isSoon: false } },
		{ name: 'tomorrow', more: { answerBy: day('2026-10-10') }, is: { left: '1 day left', isSoon: true } },
		{ name: 'the day itself', more: { answerBy: day('2026-10-09') }, is: { left: 'today', isSoon: true } },
		{ name: 'no day to answer by', more: { answerBy: null }, is: { left: '', isSoon: false } },
		{
			name: 'seen on another day, reminded since',
			more: { seenAt: on('2026-10-05T11:00:00Z'), remindedAt: on('2026-10-07T13:00:00Z') },
			is: { more: 'seen Mon 5 October', remindedOn: 'Wed 7 October' },
		},
		{
			name: 'not seen, since a mail did not arrive',
			more: { undeliveredAt: on('2026-10-02T14:00:00Z') },
			is: { more: 'mail did not arrive, not seen yet' },
		},
		{
			name: 'seen, though a mail to somebody did not arrive',
			more: { undeliveredAt: on('2026-10-02T14:00:00Z'), seenAt: on('2026-10-05T11:00:00Z') },
			is: { more: 'mail did not arrive, seen Mon 5 October' },
		},
		{ name: 'seen today', more: { seenAt: on('2026-10-09T18:00:00Z') }, is: { more: 'seen today' } },
		{
			name: 'late in the evening of the studio’s zone is still that day',
			more: { publishedAt: on('2026-10-09T03:30:00Z'), seenAt: on('2026-10-10T02:00:00Z') },
			is: { waiting: '1 day', more: 'seen today' },
		},
		{
			name: 'a change asked for two days ago waits for the studio since then',
			more: {
				state: 'change asked for',
				answeredAt: on('2026-10-07T16:00:00Z'),
				note: 'The urns at the side door, lower please',
			},
			is: { waiting: '2 days', left: '', isSoon: false, more: '“The urns at the side door, lower please”' },
		},
		{
			name: 'a change asked for, its words erased',
			more: { state: 'change asked for', answeredAt: on('2026-10-08T16:00:00Z') },
			is: { waiting: '1 day', more: '' },
		},
		{
			name: 'approved after six days',
			more: { state: 'approved', answeredAt: on('2026-10-07T16:00:00Z') },
			is: { waiting: '', left: '', more: 'answered in 6 days' },
		},
		{
			name: 'skipped at once',
			more: { state: 'skipped', answeredAt: on('2026-10-01T22:00:00Z') },
			is: { more: 'answered the same day' },
		},
		{
			name: 'installed, answered after one day',
			more: { state: 'installed', answeredAt: on('2026-10-02T22:00:00Z') },
			is: { more: 'answered in 1 day' },
		},
		{ name: 'approved without a known answer', more: { state: 'approved' }, is: { more: '' } },
		{
			name: 'not out yet',
			more: { state: 'drafting', publishedAt: null, answerBy: null, valueCents: null, marginTenths: null, palette: '' },
			is: { waiting: '', left: '', more: '', palette: '', value: '', margin: '' },
		},
		{ name: 'lapsed', more: { state: 'lapsed' }, is: { waiting: '', left: '', isSoon: false, more: '' } },
		{ name: 'one palette', more: {}, is: { palette: 'Copper and plum', value: '$617', margin: '52 %' } },
		{
			name: 'several: the least',
			more: { paletteCount: 3, palette: '' },
			is: { palette: '3 palettes', value: 'from $617' },
		},
		{ name: 'a margin of half a per cent more', more: { marginTenths: 525 }, is: { margin: '53 %' } },
		{ name: 'a loss', more: { marginTenths: -127 }, is: { margin: '−13 %' } },
	])('$name', ({ more, is }) => {
		expect(view(more)).toMatchObject(is)
	})
})

describe('the first words of a wish', () => {
	const note = (words: string) => view({ state: 'change asked for', note: words }).more

	test.each([
		{ name: 'sixty characters are told whole', words: 'a'.repeat(60), says: `“${'a'.repeat(60)}”` },
		{ name: 'sixty-one are cut to sixty', words: 'b'.repeat(61), says: `“${'b'.repeat(59)}…”` },
	])('$name', ({ words, says }) => {
		expect(note(words)).toBe(says)
	})

	test('no character is cut in two', () => {
		const says = note(`${'c'.repeat(58)}🌲🌲🌲 by the door`)
		expect(says.isWellFormed()).toBe(true)
		expect(says).toBe(`“${'c'.repeat(58)}🌲…”`)
	})
})

test('every state has its row', () => {
	for (const state of [...kept, 'lapsed' as const]) {
		const row = view({ state, answeredAt: on('2026-10-06T15:00:00Z') })
		expect(row.waiting !== '').toBe(state === 'waiting for an answer' || state === 'change asked for')
		expect(row.left !== '').toBe(state === 'waiting for an answer')
	}
})
