import { describe, expect, test } from 'vitest'
import { draftText } from '@/lib/forms/draft-form'
import { stopsOf } from '@/lib/proposal/desk/stops'
import type { Draft } from '@/lib/proposal/draft'
import { problems } from '@/lib/proposal/ready'
import { containerId, draft, facts, materialId, today, typed } from '../sample'

const names = new Map<string, string>([
	[containerId(1), 'Left urn'],
	[materialId(1), 'birch'],
])
const stops = (of: Draft, errors = {}) =>
	stopsOf(draftText(of), { errors, problems: problems(of, facts, today), names })
/** The second palette of the sample with something else in it. */
const second = (more: Partial<Draft['options'][number]>): Draft => ({
	...draft,
	options: draft.options.map((each, n) => (n === 1 ? { ...each, ...more } : each)),
})

describe('what stops publishing', () => {
	test('is nothing where the rule of publishing finds nothing', () => expect(stops(draft)).toEqual([]))

	test('says what the rule says, each with the box that it is about', () => {
		const [pot, ...pots] = draft.options[1]?.pots ?? []
		expect(pot?.container).toBe(containerId(1))
		expect(
			stops({ ...second({ name: '', palette: [], pots }), title: '', window: { from: draft.window.from, to: null } }),
		).toEqual([
			{ says: 'Give the proposal a title.', field: 'title' },
			{ says: 'Say when it goes in.', field: 'window.to' },
			{ says: 'Give the palette a name.', field: 'options.1.name' },
			{ says: 'A palette has no colours yet.', field: 'options.1.palette' },
			{ says: 'A palette: nothing is in Left urn yet.', field: `options.1.pots.${containerId(1)}` },
		])
	})

	test('names a line by where it stands among the pots, whatever their order', () => {
		const pots = (draft.options[1]?.pots ?? []).toReversed()
		const empty = pots.map((pot) =>
			pot.container === containerId(1)
				? { ...pot, lines: [typed(2, 'filler', 3), typed(1, 'thriller', 0), typed(1, 'accent', 0)] }
				: pot,
		)
		expect(stops(second({ pots: empty }))).toEqual([
			{ says: '“Brass and navy”, Left urn: birch has a count of nothing.', field: 'options.1.pots.2.lines.1.count' },
		])
	})

	test('of an extra, by its number', () => {
		const extras = draft.extras.map((each, n) => (n === 1 ? { ...each, name: '', minutes: 0, lines: [] } : each))
		expect(stops({ ...draft, extras }).map(({ field }) => field)).toEqual(['extras.1.name', 'extras.1.minutes'])
	})

	test('is what cannot be read, and that alone, while there is such a thing', () => {
		const errors = { 'options.0.pots.0.lines.0.count': 'Give a number such as 12 or 2.5.', answerBy: 'Choose a day.' }
		expect(stops({ ...draft, title: '' }, errors)).toEqual([
			{
				says: 'Palette “Copper and plum”, Left urn, birch, count: give a number such as 12 or 2.5.',
				field: 'options.0.pots.0.lines.0.count',
			},
			{ says: 'Answer by: choose a day.', field: 'answerBy' },
		])
	})
})
