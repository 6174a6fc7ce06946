import { describe, expect, test } from 'vitest'
import { difference } from '@/lib/colour/difference'
import { potStates } from '@/lib/proposal/design/pot-state'
import { propose, withRecipe } from '@/lib/proposal/design/propose'
import { emptyDraft } from '@/lib/proposal/draft'
import type { Facts } from '@/lib/proposal/facts'
import { hex } from '@/lib/units/hex'
import { containerId, first, materialId, draft as ready, facts as sample } from '../sample'
import { front, houseWinter, winterMaterials } from './house-winter'

const facts: Facts = { ...sample, materials: new Map(winterMaterials.map((each) => [each.id, each])) }
const [recipes, site] = [[houseWinter], front]
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
