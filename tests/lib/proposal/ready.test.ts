import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import type { Draft, DraftLine } from '@/lib/proposal/draft'
import type { Facts, Material } from '@/lib/proposal/facts'
import { makeRevision } from '@/lib/proposal/make'
import type { Problem } from '@/lib/proposal/problem'
import { problems } from '@/lib/proposal/ready'
import { cents } from '@/lib/units/cents'
import { day } from '@/lib/units/day'
import { knownDrafts } from './known'
import { containerId, draft, facts, materialId, money, placeId, today, typed } from './sample'

const of = (more: Partial<Draft>, by: Partial<Facts> = {}) =>
	problems({ ...draft, ...more }, { ...facts, ...by }, today)

/** The draft with its first palette or its first extra another. */
const option = (more: Partial<Draft['options'][number]>): Partial<Draft> => ({
	options: draft.options.map((each, n) => (n === 0 ? { ...each, ...more } : each)),
})
const extra = (more: Partial<Draft['extras'][number]>): Partial<Draft> => ({
	extras: draft.extras.map((each, n) => (n === 0 ? { ...each, ...more } : each)),
})
const pot = (n: number, lines: DraftLine[]) =>
	option({
		pots: (draft.options[0]?.pots ?? []).map((each) => (each.container === containerId(n) ? { ...each, lines } : each)),
	})
const knowing = (n: number, more: Partial<Material>): Partial<Facts> => {
	const known = facts.materials.get(materialId(n))
	return { materials: known ? new Map(facts.materials).set(known.id, { ...known, ...more }) : facts.materials }
}
const at = (where: string, says: string): Problem[] => [{ at: where, says }]
const pots = (n: number) => `options.a.pots.${containerId(n)}`
const line = (n: number, index: number, field: string) => `${pots(n)}.lines.${index}.${field}`

describe('a draft that is ready', () => {
	test('has no problems, and makes a revision', () => {
		expect(of({})).toEqual([])
		expect(makeRevision(draft, facts, money, 3, today)).toMatchObject({ ok: true, offer: { number: 3 } })
	})

	test.each<{ name: string; more: Partial<Draft> }>([
		{ name: 'an answer on the very day', more: { answerBy: today } },
		{ name: 'an answer on the first day of the install', more: { answerBy: day('2026-11-16') } },
		{ name: 'an install of one day', more: { window: { from: day('2026-11-17'), to: day('2026-11-17') } } },
		{ name: 'an extra of minutes alone', more: extra({ lines: [] }) },
		{ name: 'an extra of material alone', more: extra({ minutes: 0 }) },
		{
			name: 'a colour that echoes nothing',
			more: option({ palette: [{ name: 'Bone', hex: draftHex(), echoes: '' }] }),
		},
		{
			name: 'a fixed price that covers one',
			more: { agreement: { is: 'fixed', cents: cents(1), containers: [containerId(3), containerId(8)] } },
		},
	])('may have $name', ({ more }) => {
		expect(of(more)).toEqual([])
	})
})

function draftHex() {
	return draft.options[0]?.palette[0]?.hex ?? facts.cards[0]?.colour ?? expect.fail('the sample has a colour')
}

describe('what stops the whole of it', () => {
	test.each<{ name: string; more?: Partial<Draft>; by?: Partial<Facts>; is: Problem[] }>([
		{
			name: 'nobody who may approve',
			by: { hasApprover: false },
			is: at('client', 'Nobody at this client may approve yet: invite a contact first.'),
		},
		{ name: 'no title', more: { title: '' }, is: at('title', 'Give the proposal a title.') },
		{ name: 'no letter', more: { letter: '' }, is: at('letter', 'Write the letter.') },
		{ name: 'no containers', more: { containers: [], extras: [] }, is: at('containers', 'Choose the containers.') },
		{
			name: 'a container of another client',
			more: { containers: [...draft.containers, { id: containerId(9), mayLeaveOut: true, isNew: true }] },
			is: at('containers', 'A container is not this client’s.'),
		},
		{
			name: 'a container twice',
			more: { containers: [...draft.containers, { id: containerId(2), mayLeaveOut: false, isNew: true }] },
			is: at('containers', 'A container is there twice.'),
		},
		{ name: 'no palette', more: { options: [] }, is: at('options', 'Make at least one palette.') },
		{
			name: 'two palettes of one name',
			more: option({ name: 'BRASS and navy' }),
			is: at('options', 'Two palettes have the same name.'),
		},
		{
			name: 'a fixed price for nothing here',
			more: { agreement: { is: 'fixed', cents: cents(95_000), containers: [containerId(7)] } },
			is: at('agreement', 'The fixed price covers none of the containers.'),
		},
	])('$name', ({ more = {}, by = {}, is }) => {
		expect(of(more, by)).toEqual(is)
	})
})

describe('dates that stop it', () => {
	test.each<{ name: string; more: Partial<Draft>; is: Problem[] }>([
		{
			name: 'no first day',
			more: { window: { from: null, to: day('2026-11-20') } },
			is: at('window.from', 'Say when it goes in.'),
		},
		{
			name: 'no last day',
			more: { window: { from: day('2026-11-16'), to: null } },
			is: at('window.to', 'Say when it goes in.'),
		},
		{ name: 'no day to answer by', more: { answerBy: null }, is: at('answerBy', 'Say by when you need the answer.') },
		{
			name: 'an end before the beginning',
			more: { window: { from: day('2026-11-16'), to: day('2026-11-15') } },
			is: at('window.to', 'The install window ends before it begins.'),
		},
		{
			name: 'a day to answer by that has passed',
			more: { answerBy: day('2026-10-04') },
			is: at('answerBy', 'The day to answer by has passed.'),
		},
		{
			name: 'an answer after the first day of the install',
			more: { answerBy: day('2026-11-17') },
			is: at('answerBy', 'The answer would come after the first day of the install.'),
		},
	])('$name', ({ more, is }) => {
		expect(of(more)).toEqual(is)
	})
})

describe('a palette that stops it', () => {
	test.each<{ name: string; more: Partial<Draft>; by?: Partial<Facts>; is: Problem[] }>([
		{ name: 'no name', more: option({ name: '' }), is: at('options.a.name', 'Give the palette a name.') },
		{
			name: 'no colours',
			more: option({ palette: [] }),
			is: at('options.a.palette', '“Copper and plum” has no colours yet.'),
		},
		{
			name: 'a colour without a name',
			more: option({ palette: [{ name: '', hex: draftHex(), echoes: 'echoes your door' }] }),
			is: at('options.a.palette.0.name', '“Copper and plum”: a colour has no name.'),
		},
		{ name: 'an empty pot', more: pot(1, []), is: at(pots(1), '“Copper and plum”: nothing is in Left urn yet.') },
		{
			name: 'a material that is gone',
			more: pot(3, [typed(9, 'accent', 4)]),
			is: at(
				line(3, 0, 'material'),
				'“Copper and plum”, Long box: one line names a material that is not in the catalogue.',
			),
		},
		{
			name: 'a material without a pack',
			more: {},
			by: knowing(6, { pack: null }),
			is: at(line(3, 1, 'material'), '“Copper and plum”, Long box: stakes has no pack with a price yet.'),
		},
		{
			name: 'a count of nothing',
			more: pot(2, [typed(3, 'accent', 0)]),
			is: at(line(2, 0, 'count'), '“Copper and plum”, Right urn: copper globes has a count of nothing.'),
		},
		{
			name: 'fresh stems lent',
			more: pot(2, [typed(1, 'thriller', 7, 'lent')]),
			is: at(line(2, 0, 'holding'), '“Copper and plum”, Right urn: birch does not come back, so it cannot be lent.'),
		},
		{
			name: 'all that a nameless one can lack',
			more: { ...option({ name: '', palette: [], pots: [] }) },
			is: [
				{ at: 'options.a.name', says: 'Give the palette a name.' },
				{ at: 'options.a.palette', says: 'A palette has no colours yet.' },
				...['Left urn', 'Right urn', 'Long box'].map((name, n) => ({
					at: pots(n + 1),
					says: `A palette: nothing is in ${name} yet.`,
				})),
			],
		},
	])('$name', ({ more, by = {}, is }) => {
		expect(of(more, by)).toEqual(is)
	})
})

describe('an extra that stops it', () => {
	test.each<{ name: string; more: Partial<Draft>; is: Problem[] }>([
		{ name: 'no name', more: extra({ name: '' }), is: at('extras.wreath.name', 'Give the extra a name.') },
		{
			name: 'a place without a container here',
			more: extra({ place: placeId(3) }),
			is: at('extras.wreath.place', 'Wreath belongs to a place that has no container in this proposal.'),
		},
		{
			name: 'nothing to price',
			more: extra({ lines: [], minutes: 0 }),
			is: at('extras.wreath.minutes', 'Wreath has neither material nor minutes, so no price.'),
		},
		{
			name: 'a count of nothing',
			more: extra({ lines: [typed(7, 'accent', 0)] }),
			is: at('extras.wreath.lines.0.count', 'Wreath: cone picks has a count of nothing.'),
		},
		{
			name: 'a material that is gone, in an extra without a name',
			more: extra({ name: '', lines: [typed(9, 'accent', 2)] }),
			is: [
				...at('extras.wreath.name', 'Give the extra a name.'),
				...at('extras.wreath.lines.0.material', 'The extra: one line names a material that is not in the catalogue.'),
			],
		},
		{
			name: 'everything, without a name',
			more: extra({ name: '', place: placeId(3), lines: [], minutes: 0 }),
			is: [
				...at('extras.wreath.name', 'Give the extra a name.'),
				...at('extras.wreath.place', 'The extra belongs to a place that has no container in this proposal.'),
				...at('extras.wreath.minutes', 'The extra has neither material nor minutes, so no price.'),
			],
		},
	])('$name', ({ more, is }) => {
		expect(of(more)).toEqual(is)
	})
})

test('problems come in the order of the editor: the whole, the dates, the palettes, the extras', () => {
	const found = of({ title: '', answerBy: null, ...option({ palette: [] }), ...extra({ name: '' }) })
	expect(found.map((each) => each.at)).toEqual(['title', 'answerBy', 'options.a.palette', 'extras.wreath.name'])
})

test('a revision is made exactly when there is no problem', () => {
	fc.assert(
		fc.property(knownDrafts, (random) => {
			const found = problems(random, facts, today)
			const ready = makeRevision(random, facts, money, 1, today)
			expect(ready.ok).toBe(found.length === 0)
			if (!ready.ok) expect(ready.problems).toEqual(found)
		}),
		{ numRuns: 200 },
	)
})
