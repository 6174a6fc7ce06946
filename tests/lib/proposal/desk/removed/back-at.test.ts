import { describe, expect, test } from 'vitest'
import { draftText } from '@/lib/forms/draft-form'
import { backAt } from '@/lib/proposal/desk/removed/back-at'
import { putBack } from '@/lib/proposal/desk/removed/put-back'
import { remove, replacePots } from '@/lib/proposal/desk/removed/remove'
import type { Target } from '@/lib/proposal/desk/removed/removed'
import { containerId, draft } from '../../sample'

const note = { option: 'b', container: containerId(3), check: 'hold', note: 'Staked.' }
const text = draftText({ ...draft, overruled: [note] })

const cases: readonly { target: Target; at: string }[] = [
	{ target: { is: 'palette', option: 'b' }, at: 'options.1.name' },
	{ target: { is: 'colour', option: 'b', at: 0 }, at: 'options.1.palette.0.hex' },
	{
		target: { is: 'line', of: { option: 'b', container: containerId(2) }, at: 1 },
		at: 'options.1.pots.1.lines.1.material',
	},
	{ target: { is: 'line', of: { extra: 'wreath' }, at: 0 }, at: 'extras.0.lines.0.material' },
	{ target: { is: 'extra', extra: 'wreath' }, at: 'extras.0.name' },
	{ target: { is: 'container', container: containerId(2) }, at: `containers.${containerId(2)}` },
	{
		target: { is: 'note', option: 'b', container: containerId(3), check: 'hold' },
		at: `options.1.found.${containerId(3)}`,
	},
]

describe('after something was put back', () => {
	test.each(cases)('$target.is: one goes on at $at', ({ target, at }) => {
		const done = remove(text, target)
		const back = done?.removed && putBack(done.draft, done.removed)
		expect(done?.removed && back && backAt(back.draft, done.removed)).toBe(at)
	})

	test('where one thing took the place of another, one stays', () => {
		const { draft: now, removed } = replacePots(text, 'a', [])
		expect(removed && backAt(now, removed)).toBeNull()
	})
})
