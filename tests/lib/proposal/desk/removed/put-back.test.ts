import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { type DraftText, draftForm, draftText } from '@/lib/forms/draft-form'
import { putBack } from '@/lib/proposal/desk/removed/put-back'
import { remove, replacePots } from '@/lib/proposal/desk/removed/remove'
import type { Target } from '@/lib/proposal/desk/removed/removed'
import { drafts } from '../../arbitrary'
import { containerId, draft, first } from '../../sample'

const written = draftText({
	...draft,
	overruled: [
		{ option: 'b', container: containerId(1), check: 'height', note: 'The lamp hangs high.' },
		{ option: 'a', container: containerId(2), check: 'hold', note: 'They are staked.' },
		{ option: 'a', container: containerId(3), check: 'hold', note: 'It is bolted down.' },
		{ option: 'b', container: containerId(3), check: 'wind', note: 'A court.' },
	],
})

/** Everything that can be taken out of a draft. */
function targets({ options, extras, containers, overruled }: DraftText): Target[] {
	return [
		...options.flatMap(({ key: option, palette, pots }): Target[] => [
			{ is: 'palette', option },
			...palette.map((_, at) => ({ is: 'colour', option, at }) as const),
			...pots.flatMap(({ container, lines }) =>
				lines.map((_, at) => ({ is: 'line', of: { option, container }, at }) as const),
			),
		]),
		...extras.flatMap(({ key: extra, lines }): Target[] => [
			{ is: 'extra', extra },
			...lines.map((_, at) => ({ is: 'line', of: { extra }, at }) as const),
		]),
		...containers.map(({ id: container }) => ({ is: 'container', container }) as const),
		...overruled.map(({ note: _, ...at }) => ({ is: 'note', ...at }) as const),
	]
}

/** As the editor holds them: one key, one palette or extra. */
const texts = drafts.map(draftText).filter((text) => draftForm.safeParse(text).success)
const taken = (from: DraftText, target: Target) => remove(from, target) ?? expect.fail('it is there')
const back = (now: DraftText, { removed }: ReturnType<typeof taken>) =>
	removed === null ? expect.fail('it was kept') : putBack(now, removed)?.draft

/** A change of something that was not removed: the words of the whole, and something added at the end. */
const elsewhere = (text: DraftText): DraftText => ({
	...text,
	title: 'Changed meanwhile',
	window: { from: '2026-11-09', to: '2026-11-13' },
	agreement: { is: 'discount', percent: '7.5' },
	options: text.options.map((each) => ({ ...each, supplementCents: '12.00' })),
})

describe('put back', () => {
	test('is what was there, to the last note and in its order, whatever was removed', () => {
		let tried = 0
		fc.assert(
			fc.property(fc.oneof(texts, fc.constant(written)), fc.nat(), (text, n) => {
				const all = targets(text)
				const target = all[n % Math.max(1, all.length)]
				fc.pre(target !== undefined)
				const done = taken(text, target)
				expect(done.draft).not.toEqual(text)
				expect(back(done.draft, done)).toEqual(text)
				tried += 1
			}),
			{ numRuns: 400 },
		)
		expect(tried).toBe(400)
	})

	test('every single thing of a whole draft', () => {
		const all = targets(written)
		expect(new Set(all.map(({ is }) => is)).size).toBe(6)
		for (const target of all) {
			const done = taken(written, target)
			expect(back(done.draft, done)).toEqual(written)
		}
	})

	test('leaves alone what was changed elsewhere meanwhile', () => {
		for (const target of targets(written).filter(({ is }) => is !== 'palette')) {
			const done = taken(written, target)
			expect(back(elsewhere(done.draft), done)).toEqual(elsewhere(written))
		}
		const done = taken(written, { is: 'palette', option: 'a' })
		const now = back(elsewhere(done.draft), done)
		expect(now).toEqual({ ...elsewhere(written), options: [written.options[0], elsewhere(written).options[1]] })
	})

	test('a line comes back among those that were added meanwhile', () => {
		const of = { option: 'a', container: containerId(1) }
		const done = taken(written, { is: 'line', of, at: 1 })
		const added = { ...first(first(first(written.options).pots).lines), count: '99' }
		const more = {
			...done.draft,
			options: done.draft.options.map((option, n) =>
				n === 0 ? { ...option, pots: option.pots.map((pot) => ({ ...pot, lines: [...pot.lines, added] })) } : option,
			),
		}
		const counts = back(more, done)?.options[0]?.pots[0]?.lines.map(({ count }) => count)
		expect(counts).toEqual(['12', '1.25', '99'])
	})

	test('a palette whose key another took meanwhile gets one of its own, and its notes with it', () => {
		const done = taken(written, { is: 'palette', option: 'a' })
		const usurped = { ...done.draft, options: [{ ...first(done.draft.options), key: 'a' }] }
		const now = back(usurped, done)
		expect(now?.options.map(({ key }) => key)).toEqual(['b1', 'a'])
		expect(now?.overruled.filter(({ option }) => option === 'b1')).toHaveLength(2)
		expect(draftForm.safeParse(now).success).toBe(true)
	})

	test('where its palette is gone there is nothing to put it back into', () => {
		const done = taken(written, { is: 'colour', option: 'a', at: 0 })
		expect(back({ ...done.draft, options: [] }, done)).toBeUndefined()
		const line = taken(written, { is: 'line', of: { extra: 'wreath' }, at: 0 })
		expect(back({ ...line.draft, extras: [] }, line)).toBeUndefined()
	})

	test('what is not there cannot be removed', () => {
		expect(remove(written, { is: 'palette', option: 'z' })).toBeUndefined()
		expect(remove(written, { is: 'line', of: { option: 'a', container: containerId(1) }, at: 9 })).toBeUndefined()
		expect(remove(written, { is: 'note', option: 'a', container: containerId(1), check: 'hold' })).toBeUndefined()
	})
})

describe('what other things took the place of', () => {
	const { key, pots } = first(written.options)
	const fresh = pots.map((pot) => ({ ...pot, lines: pot.lines.slice(0, 1) })).reverse()

	test('comes back in its order, and what had replaced it can be put back again', () => {
		const done = replacePots(written, key, fresh)
		const again = done.removed && putBack(done.draft, done.removed)
		expect(again?.draft).toEqual(written)
		expect(again?.removed && putBack(again.draft, again.removed)?.draft).toEqual(done.draft)
	})

	test('leaves what was put into another container meanwhile', () => {
		const done = replacePots(written, key, fresh)
		const more = { container: containerId(9), lines: first(pots).lines }
		const since = {
			...done.draft,
			options: done.draft.options.map((each) => (each.key === key ? { ...each, pots: [...each.pots, more] } : each)),
		}
		expect(done.removed && putBack(since, done.removed)?.draft.options[0]?.pots).toEqual([...pots, more])
	})

	test('is not kept where there was nothing', () => {
		const bare = { ...written, options: [{ ...first(written.options), pots: [] }] }
		expect(replacePots(bare, key, pots)).toMatchObject({ removed: null, draft: { options: [{ pots }] } })
	})
})
