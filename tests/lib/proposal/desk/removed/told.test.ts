import { describe, expect, test } from 'vitest'
import { draftText } from '@/lib/forms/draft-form'
import { remove, replacePots } from '@/lib/proposal/desk/removed/remove'
import type { Removed, Target } from '@/lib/proposal/desk/removed/removed'
import { calledRemoved, placeOf, removedInWords } from '@/lib/proposal/desk/removed/told'
import { containerId, draft, materialId } from '../../sample'

const note = { option: 'a', container: containerId(2), check: 'hold', note: 'Staked.' }
const text = draftText({ ...draft, overruled: [note] })
const names = new Map<string, string>([
	[containerId(2), 'right urn'],
	[materialId(2), 'noble fir'],
])

const cases: readonly { target: Target; called: string; says: string; list: string }[] = [
	{
		target: { is: 'palette', option: 'b' },
		called: '“Brass and navy”',
		says: '“Brass and navy” was removed.',
		list: 'options',
	},
	{
		target: { is: 'colour', option: 'a', at: 0 },
		called: 'the colour “Copper and plum one”',
		says: 'The colour “Copper and plum one” was removed.',
		list: 'options.a.palette',
	},
	{
		target: { is: 'line', of: { option: 'a', container: containerId(1) }, at: 1 },
		called: 'noble fir',
		says: 'Noble fir was removed.',
		list: `options.a.pots.${containerId(1)}`,
	},
	{
		target: { is: 'line', of: { extra: 'wreath' }, at: 0 },
		called: 'the line',
		says: 'The line was removed.',
		list: 'extras.wreath.lines',
	},
	{
		target: { is: 'extra', extra: 'wreath' },
		called: 'the extra “Wreath”',
		says: 'The extra “Wreath” was removed.',
		list: 'extras',
	},
	{
		target: { is: 'container', container: containerId(2) },
		called: 'right urn',
		says: 'Right urn was removed.',
		list: `containers.${containerId(2)}`,
	},
	{
		target: { is: 'note', option: 'a', container: containerId(2), check: 'hold' },
		called: 'the note',
		says: 'The note was removed.',
		list: `notes.a.${containerId(2)}`,
	},
]

const removedOf = (target: Target): Removed => remove(text, target)?.removed ?? expect.fail('it is there')

describe('what was removed', () => {
	test.each(cases)('$target.is is told as “$says”', ({ target, called, says, list }) => {
		const removed = removedOf(target)
		expect(calledRemoved(removed, names)).toBe(called)
		expect(removedInWords(removed, names)).toBe(says)
		expect(placeOf(removed).list).toBe(list)
	})

	test('is offered where it stood', () => {
		expect(placeOf(removedOf({ is: 'palette', option: 'b' })).at).toBe(1)
		expect(placeOf(removedOf({ is: 'line', of: { option: 'a', container: containerId(1) }, at: 1 })).at).toBe(1)
	})

	test('what other things took the place of is offered at its palette', () => {
		const { removed } = replacePots(text, 'b', [])
		if (removed === null) expect.fail('something was there')
		expect(placeOf(removed)).toEqual({ list: 'options.b.pots', at: 0 })
		expect(removedInWords(removed, names)).toBe('Something else is in the containers now.')
	})
})
