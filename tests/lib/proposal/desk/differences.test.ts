import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { draftText } from '@/lib/forms/draft-form'
import { differences } from '@/lib/proposal/desk/differences'
import type { Json } from '@/lib/record/canonical'
import { drafts } from '../arbitrary'
import { draft } from '../sample'

const text = (of: typeof draft): Json => JSON.parse(JSON.stringify(draftText(of)))

describe('where two drafts differ', () => {
	test.each<{ name: string; mine: Json; theirs: Json; is: unknown }>([
		{ name: 'nowhere', mine: { title: 'a', pots: [1, 2] }, theirs: { pots: [1, 2], title: 'a' }, is: [] },
		{
			name: 'a word',
			mine: { title: 'Winter', letter: 'Dear Ada' },
			theirs: { title: 'Snow', letter: 'Dear Ada' },
			is: [{ at: 'Title', mine: 'Winter', theirs: 'Snow' }],
		},
		{
			name: 'deep down, counted from one',
			mine: { options: [{ pots: [{ lines: [{ count: '3' }, { count: '5' }] }] }] },
			theirs: { options: [{ pots: [{ lines: [{ count: '3' }, { count: '8' }] }] }] },
			is: [{ at: 'Palette 1, pot 1, line 2, count', mine: '5', theirs: '8' }],
		},
		{
			name: 'what only one has',
			mine: { extras: [{ name: 'Wreath' }] },
			theirs: { extras: [{ name: 'Wreath' }, { name: 'Garland', minutes: '9' }] },
			is: [
				{ at: 'Extra “Garland”, name', mine: null, theirs: 'Garland' },
				{ at: 'Extra “Garland”, minutes', mine: null, theirs: '9' },
			],
		},
		{
			name: 'a tick and a date that is open',
			mine: { takeDown: true, answerBy: null },
			theirs: { takeDown: false, answerBy: '2026-10-30' },
			is: [
				{ at: 'Taken down at the end', mine: 'true', theirs: 'false' },
				{ at: 'Answer by', mine: 'null', theirs: '2026-10-30' },
			],
		},
	])('$name', ({ mine, theirs, is }) => {
		expect(differences(mine, theirs)).toEqual(is)
	})

	test('by the names of palette, container and material; by number where two stand in the same place', () => {
		const pots = (lines: Json) => [{ container: 'c1', lines }]
		const mine = { options: [{ name: 'Copper', pots: pots([{ material: 'm1', count: '3' }, { material: 'm2' }]) }] }
		const theirs = { options: [{ name: 'Copper', pots: pots([{ material: 'm1', count: '4' }, { material: 'm3' }]) }] }
		const names = new Map([
			['c1', 'Left urn'],
			['m1', 'noble fir'],
			['m2', 'boxwood'],
			['m3', 'cedar'],
		])
		expect(differences(mine, theirs, names)).toEqual([
			{ at: 'Palette “Copper”, Left urn, noble fir, count', mine: '3', theirs: '4' },
			{ at: 'Palette “Copper”, Left urn, line 2, material', mine: 'boxwood', theirs: 'cedar' },
		])
		const renamed = { options: [{ ...mine.options[0], name: 'Kiln' }] }
		expect(differences(mine, renamed, names)).toEqual([{ at: 'Palette 1, name', mine: 'Copper', theirs: 'Kiln' }])
	})

	test('of two whole drafts, in the order of the first', () => {
		const theirs = { ...draft, title: 'Snow', design: 'repeat' as const, takeDown: true }
		expect(differences(text(draft), text(theirs))).toEqual([
			{ at: 'Title', mine: 'Winter at the bakery', theirs: 'Snow' },
			{ at: 'Design', mine: 'new', theirs: 'repeat' },
			{ at: 'Taken down at the end', mine: 'false', theirs: 'true' },
		])
	})

	test('none from itself; there and back the other way round; and each is one', () => {
		const sides = (of: { at: string; mine: string | null; theirs: string | null }[]) =>
			of.map(({ at, mine, theirs }) => JSON.stringify([at, mine, theirs])).toSorted()
		fc.assert(
			fc.property(drafts, drafts, (a, b) => {
				expect(differences(text(a), text(a))).toEqual([])
				const back = differences(text(b), text(a)).map(({ at, mine, theirs }) => ({ at, mine: theirs, theirs: mine }))
				expect(sides(differences(text(a), text(b)))).toEqual(sides(back))
				for (const { mine, theirs } of back) expect(mine).not.toBe(theirs)
			}),
			{ numRuns: 60 },
		)
	})
})
