import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { grownLines } from '@/lib/proposal/design/grown-lines'
import { draftSchema } from '@/lib/proposal/draft'
import type { Facts } from '@/lib/proposal/facts'
import type { Ground } from '@/lib/proposal/start/fresh'
import { applied } from '@/lib/season/collection/applied'
import { hex } from '@/lib/units/hex'
import { containerId, draft as earlier, first, materialId, placeId, typed } from '../../proposal/sample'
import { collection, facts, ground, recipes } from './sample'

const shelf = { recipes }
const { draft, fits, told } = applied(collection, ground, shelf, 2)

describe('the house designs for one client', () => {
	test('are as many as were asked for, best first, each with how it fits', () => {
		expect(draft.options.map(({ key }) => key)).toEqual(fits.map(({ option }) => option))
		expect(fits).toHaveLength(2)
		expect(first(fits).worth).toBeGreaterThanOrEqual(fits[1]?.worth ?? 1)
		expect(told).toEqual([])
	})

	test('brass and red before a brass bell and a red door', () => {
		const { name, well } = first(fits)
		expect(name).toBe('Bell brass')
		expect(well).toContain('Brass echoes your door brass.')
		expect(first(draft.options).palette.map(({ echoes }) => echoes)).toContain('echoes your door brass')
	})

	test('before another wall another one', () => {
		const plum = [{ name: 'awning', hex: hex('#6a2f4b'), side: 'outside' }] as const
		const sites = facts.sites.map((site) => ({ ...site, door: null }))
		const other = applied(collection, { ...ground, facts: { ...facts, sites }, site: plum }, shelf, 1)
		expect(first(other.fits).name).toBe('Plum dusk')
	})

	test('bring title, letter and extras, and leave dates and agreement as they are', () => {
		expect([draft.title, draft.letter]).toEqual(['Winter at your door', 'Held against your wall.'])
		expect(draft.extras.map(({ name, place }) => [name, place])).toEqual([
			['A mid-winter refresh, Front door', placeId(1)],
			['A mid-winter refresh, Side door', placeId(2)],
		])
		const dated = {
			...ground,
			draft: { ...ground.draft, window: earlier.window, title: 'Her own', agreement: discount },
		}
		const own = applied(collection, dated, shelf, 1).draft
		expect([own.title, own.window, own.agreement]).toEqual(['Her own', earlier.window, discount])
	})

	test('put the box’s recipe into the box and the pot’s into the pots, grown to each', () => {
		const [option] = draft.options
		const greens = (n: number) =>
			option?.pots.find(({ container }) => container === containerId(n))?.lines.find(({ role }) => role === 'filler')
				?.count
		expect(greens(3)).toMatchObject({ way: 'grown', grows: { way: 'greens', count: 16 } })
		expect(greens(1)).toMatchObject({ way: 'grown', grows: { way: 'greens', count: 12 } })
		expect(greens(1)).not.toEqual(greens(2))
	})

	test('offer no lights where no outlet is near, and say so', () => {
		const lamp = { ...first([...facts.materials.values()]), id: materialId(40), kind: 'light', role: 'accent' } as const
		const materials = new Map([...facts.materials, [lamp.id, lamp]])
		const cards = facts.cards.map((card) => ({ ...card, outletNear: card.place === placeId(2) }))
		const lights = { key: 'e2', name: 'Lights', words: '', minutes: 0, lines: [typed(40, 'accent', 1, 'lent')] }
		const lit = applied(
			{ ...collection, extras: [lights] },
			{ ...ground, facts: { ...facts, cards, materials } },
			shelf,
			1,
		)
		expect(lit.draft.extras.map(({ place }) => place)).toEqual([placeId(2)])
		expect(lit.told).toEqual(['Lights is not offered at Front door: no outlet is near.'])
	})

	test('tell what is bought for this client alone, all of it in one sentence, and are chosen all the same', () => {
		const lonely = (...names: string[]) => {
			const known = [...facts.materials].map(
				([of, each]) => [of, { ...each, onlyHere: names.includes(each.name) }] as const,
			)
			return applied(collection, { ...ground, facts: { ...facts, materials: new Map(known) } }, shelf, 2)
		}
		const used = first(draft.options).pots.flatMap(({ lines }) => lines.map(({ material }) => material))
		const bought = [...facts.materials.values()].filter(({ id, inStock }) => used.includes(id) && inStock === 0)
		const [one, other] = bought.map(({ name }) => name)
		if (one === undefined || other === undefined) expect.fail('two materials are bought')
		const alone = lonely(one, other)
		expect(first(alone.fits).badly.at(-1)?.toLowerCase()).toBe(
			`${one} and ${other} are in nobody else’s design this season: whole packs are bought for this client alone.`,
		)
		expect(first(lonely(one).fits).badly.at(-1)).toContain(' is in nobody else’s design')
		expect(alone.fits.map(({ option, worth }) => [option, worth])).toEqual(
			fits.map(({ option, worth }) => [option, worth]),
		)
	})

	test('tell what has to be looked at again, and in which pot', () => {
		const shallow = facts.cards.map((card) => (card.id === containerId(2) ? { ...card, soilDepthCm: 9 } : card))
		const [fit] = applied(collection, { ...ground, facts: { ...facts, cards: shallow } }, shelf, 1).fits
		expect(fit?.badly.filter((says) => says.startsWith('Right urn: '))).not.toEqual([])
	})
})

const discount = { is: 'discount', percent: 7 } as const

describe('whatever the client’s containers are', () => {
	const measure = fc.integer({ min: 26, max: 120 })
	const grounds = fc.tuple(measure, measure, measure).map((across): Ground => {
		const cards = facts.cards.map((card, index) => {
			const topCm = across[index] ?? 40
			return { ...card, topCm, bottomCm: topCm - 6 }
		})
		return { ...ground, facts: { ...facts, cards } }
	})
	const retired = fc.subarray([...facts.materials.keys()], { maxLength: 6 })
	const without = (of: Facts, gone: readonly string[]): Facts => ({
		...of,
		materials: new Map([...of.materials].map(([id, each]) => [id, { ...each, isRetired: gone.includes(id) }])),
	})

	test('only theirs are filled, only with what is taken; twice is the same; the draft can be kept', () => {
		fc.assert(
			fc.property(grounds, retired, fc.constantFrom(1, 2, 3), (of, gone, count) => {
				const here = { ...of, facts: without(of.facts, gone) }
				const made = applied(collection, here, shelf, count)
				const own = new Set<string>(here.facts.cards.map(({ id }) => id))
				const pots = made.draft.options.flatMap((option) => option.pots)
				expect(pots.every(({ container }) => own.has(container))).toBe(true)
				expect(pots.flatMap(({ lines }) => lines).filter(({ material }) => gone.includes(material))).toEqual([])
				expect(applied(collection, here, shelf, count)).toEqual(made)
				expect(draftSchema.safeParse(made.draft).success).toBe(true)
				expect(new Set(made.draft.options.map(({ key }) => key)).size).toBe(count)
			}),
			{ numRuns: 12 },
		)
	})

	test('every count is what the lines grow to there, and no other pot’s', () => {
		fc.assert(
			fc.property(grounds, (of) => {
				for (const { pots } of applied(collection, of, shelf, 2).draft.options)
					for (const { container, lines } of pots) {
						const card = of.facts.cards.find(({ id }) => id === container)
						if (card === undefined) throw new Error('A pot that is not theirs.')
						const recipe = lines.flatMap(({ count, ...rest }) =>
							count.way === 'grown' ? [{ ...rest, grows: count.grows }] : [],
						)
						expect(grownLines(recipe, [], card, of.facts.materials)).toEqual(lines)
					}
			}),
			{ numRuns: 12 },
		)
	})
})
