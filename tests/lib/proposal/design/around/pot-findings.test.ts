import { describe, expect, test } from 'vitest'
import { type Around, nothingAround } from '@/lib/proposal/design/around/around'
import { potStates } from '@/lib/proposal/design/pot-state'
import type { Facts } from '@/lib/proposal/facts'
import { hex } from '@/lib/units/hex'
import { id } from '@/lib/units/id'
import { draft, facts, first, materialId, placeId } from '../../sample'

const option = first(draft.options)
const client = id<'client'>('00000000-0000-7000-8000-00000000e003')
const near = { name: 'Kiln red', hexes: [hex('#b76940')] }
const far = { name: 'Navy', hexes: [hex('#24365a')] }

/** Per pot, the keys of what was found beyond the recipe itself. */
const keys = (around: Partial<Around>, of: Facts = facts, notes = draft.overruled) =>
	potStates(option, { ...draft, overruled: notes }, of, { ...nothingAround, ...around }).map(({ open }) =>
		open.map(({ key }) => key).filter((key) => /^(palette|alone)/.test(key)),
	)
const neighbour = (place: number, ...palettes: (typeof near)[]) => ({
	neighbours: [{ client, name: 'Dunnacre Books', place: placeId(place), palettes }],
})

describe('last year’s palette', () => {
	test('is said once, at the first container', () =>
		expect(keys({ lastYear: near })).toEqual([['palette/last year/caution'], [], []]))
	test('is not said of other colours under the same name', () =>
		expect(keys({ lastYear: { ...far, name: option.name } })).toEqual([[], [], []]))
	test('lets itself be overruled with a note', () => {
		const container = first(draft.containers).id
		const note = { option: option.key, container, check: 'palette/last year/caution', note: 'They asked for it.' }
		expect(keys({ lastYear: near }, facts, [note])).toEqual([[], [], []])
	})
})

describe('the neighbour’s palette', () => {
	const key = `palette/neighbour/${client}/caution`
	test('is said at the first container in their street', () => {
		expect(keys(neighbour(1, near))).toEqual([[key], [], []])
		expect(keys(neighbour(2, far, near))).toEqual([[], [], [key]])
	})
	test('is not said of other colours', () => expect(keys(neighbour(1, far))).toEqual([[], [], []]))
	test('names the neighbour and the palette', () => {
		const [pot] = potStates(option, draft, facts, { lastYear: null, ...neighbour(1, near) })
		expect(pot?.open.find((each) => each.key === key)?.says).toBe(
			'Dunnacre Books, in the same street, has nearly these colours this season, “Kiln red”.',
		)
	})
	test('has a key that a note can keep', () => expect(key.length).toBeLessThanOrEqual(80))
})

describe('a material that nobody else uses', () => {
	const lonely = (...alone: number[]): Facts => ({
		...facts,
		materials: new Map(
			[...facts.materials].map(([of, each]) => [of, { ...each, onlyHere: alone.some((n) => materialId(n) === of) }]),
		),
	})
	const key = (n: number) => `alone/${materialId(n)}/caution`

	test('is said at the first container that takes it', () => {
		expect(keys({}, lonely(1, 3, 4))).toEqual([[key(1)], [key(3)], [key(4)]])
		expect(keys({}, lonely(5))).toEqual([[], [], []])
	})
	test('is not said of what storage holds', () => {
		const { materials } = lonely(1, 3)
		const kept = new Map(
			[...materials].map(([of, each]) => [of, of === materialId(3) ? { ...each, inStock: 2 } : each]),
		)
		expect(keys({}, { ...facts, materials: kept })).toEqual([[key(1)], [], []])
	})
	test('is not said while nobody else’s season is designed', () =>
		expect(keys({}, lonely(1, 2, 3, 4, 5, 6, 7))).toEqual([[], [], []]))
	test('is not said of what is the client’s own', () => {
		const own = option.pots.map((pot) => ({
			...pot,
			lines: pot.lines.map((line) => ({ ...line, holding: 'own' as const })),
		}))
		const [pot] = potStates({ ...option, pots: own }, draft, lonely(1, 3, 4))
		expect(pot?.open.filter((each) => each.key.startsWith('alone'))).toEqual([])
	})
})
