import { describe, expect, test } from 'vitest'
import { difference } from '@/lib/colour/difference'
import { potStates } from '@/lib/proposal/design/pot-state'
import { type LibraryRecipe, propose, withRecipe } from '@/lib/proposal/design/propose'
import { emptyDraft } from '@/lib/proposal/draft'
import type { Facts, Material } from '@/lib/proposal/facts'
import { hex } from '@/lib/units/hex'
import { containerId, first, materialId, materials, draft as ready, facts as sample } from '../sample'

const named = (n: number, base: number, name: string, colour: string, more: Partial<Material> = {}): Material => ({
	...first(materials.slice(base - 1)),
	id: materialId(n),
	name,
	hex: hex(colour),
	had: [10, 11, 12],
	lasts: [11, 12, 1, 2],
	...more,
})
const stems = { role: 'thriller', piece: 'branch', form: 'straight stems', lengthCm: 110 } as const
const balls = { role: 'accent', form: 'cluster', kind: 'ornament', piece: 'cluster kept' } as const
const all = [
	named(21, 1, 'red dogwood', '#8f2c2f', stems),
	named(22, 1, 'gold dogwood', '#cdb05a', stems),
	named(23, 1, 'white birch', '#d8d0c1', stems),
	named(24, 3, 'brass globes', '#bb9346', balls),
	named(25, 3, 'pewter globes', '#82868b', balls),
	named(26, 3, 'plum globes', '#6a2f4b', balls),
	named(27, 3, 'rose globes', '#b3596b', balls),
	named(28, 4, 'noble fir', '#3d6147', { role: 'filler', form: 'short needle', hazards: [] }),
	named(29, 4, 'cedar', '#566b3d', { role: 'spiller', form: 'flat fan', hazards: [] }),
]
const facts: Facts = { ...sample, materials: new Map(all.map((each) => [each.id, each])) }
const recipes: LibraryRecipe[] = [
	{
		id: 'r',
		name: 'House winter',
		quarter: 'winter',
		lines: [
			{ material: materialId(21), role: 'thriller', holding: 'sold', grows: { way: 'stems', count: 12 } },
			{ material: materialId(28), role: 'filler', holding: 'sold', grows: { way: 'greens', count: 20 } },
			{ material: materialId(29), role: 'spiller', holding: 'sold', grows: { way: 'rim', count: 9 } },
			{ material: materialId(24), role: 'accent', holding: 'lent', grows: { way: 'faces', count: 1 } },
		],
	},
]
const site = [
	{ name: 'door brass', hex: hex('#b08d4a'), side: 'outside' },
	{ name: 'red door', hex: hex('#8a2a30'), side: 'outside' },
] as const
const empty = emptyDraft({ from: null, to: null, answerBy: null })
const chosen = [1, 2, 3].map((n) => ({ id: containerId(n), mayLeaveOut: false, isNew: false }))
const draft = { ...empty, containers: chosen }

describe('palettes for a wall', () => {
	const { options, short } = propose(draft, facts, { site, recipes })

	test('are three, each with a recipe grown to every container', () => {
		expect([options.length, short]).toEqual([3, null])
		for (const { pots, palette, name } of options) {
			expect(name).not.toBe('')
			expect(palette.length).toBeGreaterThan(1)
			expect(pots.map(({ container }) => container)).toEqual(chosen.map(({ id }) => id))
			for (const { lines } of pots)
				expect(lines.every(({ count }) => count.way === 'grown' && count.value > 0)).toBe(true)
		}
	})

	test('lead with colours that can be told apart, and wear them', () => {
		const leads = options.map(({ palette }) => first(palette).hex)
		for (const [index, lead] of leads.entries())
			for (const other of leads.slice(index + 1)) expect(difference(lead, other)).toBeGreaterThan(10)
		for (const { palette, pots } of options) {
			const worn = first(pots).lines.map(({ material }) => facts.materials.get(material)?.hex)
			expect(palette.some(({ hex: colour }) => worn.includes(colour))).toBe(true)
		}
	})

	test('take keys that the draft has not, and the same question has the same answer', () => {
		const again = propose({ ...draft, options: [{ ...first(options), key: 'p1' }] }, facts, { site, recipes })
		expect(again.options.map(({ key }) => key)).toEqual(['p2', 'p3', 'p4'])
		expect(propose(draft, facts, { site, recipes })).toEqual({ options, short })
	})

	test('need containers first', () => {
		expect(propose(empty, facts, { site, recipes })).toEqual({
			options: [],
			short: 'Choose the containers first: the palettes are made for their wall.',
		})
	})
})

test('a recipe in the colours of an option puts its own stems and globes in', () => {
	const [option] = propose(draft, facts, { site, recipes }).options
	const painted = {
		...first(option === undefined ? [] : [option]),
		palette: [{ name: 'Pewter', hex: hex('#82868b'), echoes: '' }],
	}
	const made = withRecipe(painted, first(recipes), draft, facts, site)
	expect(first(made.pots).lines.map(({ material }) => material)).toContain(materialId(25))
	expect(made.palette).toEqual(painted.palette)
})

describe('what is told of a pot', () => {
	const option = first(propose(draft, facts, { site, recipes }).options)
	const states = potStates(option, draft, facts)

	test('its summary, its weight, and what the checks find', () => {
		expect(states.map(({ container }) => container)).toEqual(chosen.map(({ id }) => id))
		expect(first(states).says).toMatch(/up the middle/)
		expect(first(states).weighs).toMatch(/^About \d+ lb when wet$/)
	})

	test('a note lets a finding stand, and nothing else', () => {
		const found = states.find(({ open }) => open.length > 0)
		if (found === undefined) throw new Error('No check finds anything in these pots.')
		const [check] = found.open
		const noted = {
			option: option.key,
			container: found.container,
			check: check?.key ?? '',
			note: 'It is the client’s wish.',
		}
		const [after] = potStates(option, { ...draft, overruled: [noted] }, facts).filter(
			({ container }) => container === found.container,
		)
		expect(after?.open).toEqual(found.open.slice(1))
		expect(after?.overruled.map(({ key, note }) => [key, note])).toEqual([[check?.key, noted.note]])
	})

	test('an empty pot is told as empty', () => {
		const bare = { ...option, pots: [] }
		expect(potStates(bare, ready, facts).every(({ open }) => open.some(({ key }) => key.startsWith('empty')))).toBe(
			true,
		)
	})
})
