import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { difference } from '@/lib/colour/difference'
import { judge } from '@/lib/colour/palette/judge'
import { palettes } from '@/lib/colour/palette/palettes'
import type { DesignMaterial } from '@/lib/recipe/traits'
import { asks, drawnMaterials, usable } from './ask'

/** As many of these as lie more than ΔE00 10 apart from each other, up to three: every set is tried. */
function mostApart(all: readonly DesignMaterial[]): number {
	const isApart = (a: DesignMaterial, b: DesignMaterial) => difference(a.hex, b.hex) > 10
	const pairs = all.flatMap((a, at) => all.slice(at + 1).flatMap((b) => (isApart(a, b) ? [[a, b] as const] : [])))
	const isTriple = pairs.some(([a, b]) => all.some((c) => isApart(a, c) && isApart(b, c)))
	return isTriple ? 3 : pairs.length > 0 ? 2 : Math.min(1, all.length)
}

const runs = { numRuns: 200 }

describe('whatever the front and the materials', () => {
	test('there are three palettes wherever three leading colours differ, as many as can be where not, and a reason then', () => {
		fc.assert(
			fc.property(asks(), (ask) => {
				const made = palettes(ask)
				expect(made.palettes.length).toBe(mostApart(usable(ask)))
				expect(made.short === null).toBe(made.palettes.length === 3)
			}),
			runs,
		)
	})

	test('every colour is that of its leading material, which can be used', () => {
		fc.assert(
			fc.property(asks(), (ask) => {
				const byId = new Map(usable(ask).map((each) => [each.id, each]))
				for (const { hex, materials } of palettes(ask).palettes.flatMap(({ colours }) => colours)) {
					const [leading] = materials
					expect(leading === undefined ? undefined : byId.get(leading)?.hex).toBe(hex)
					for (const id of materials) expect(byId.has(id)).toBe(true)
				}
			}),
			runs,
		)
	})

	test('leading colours are more than ΔE00 10 apart, colours of one palette more than 8, and names differ', () => {
		fc.assert(
			fc.property(asks(30), (ask) => {
				const made = palettes(ask).palettes
				const pairs = <Of>(all: readonly Of[]) => all.flatMap((a, at) => all.slice(at + 1).map((b) => [a, b] as const))
				for (const [a, b] of pairs(made.flatMap(({ colours }) => colours.slice(0, 1))))
					expect(difference(a.hex, b.hex)).toBeGreaterThan(10)
				for (const { colours } of made)
					for (const [a, b] of pairs(colours)) {
						expect(difference(a.hex, b.hex)).toBeGreaterThan(8)
						expect(a.name).not.toBe(b.name)
					}
				const names = made.map(({ name }) => name)
				expect(new Set(names).size).toBe(names.length)
			}),
			runs,
		)
	})

	test('fits a proposal: names of at most 40 and 60 letters, echoes of at most 60, one to five colours', () => {
		fc.assert(
			fc.property(asks(30), (ask) => {
				for (const { name, colours } of palettes(ask).palettes) {
					expect(name.length > 0 && name.length <= 60).toBe(true)
					expect(colours.length > 0 && colours.length <= 5).toBe(true)
					for (const each of colours) {
						expect(each.name.length > 0 && each.name.length <= 40).toBe(true)
						expect(each.echoes.length).toBeLessThanOrEqual(60)
					}
				}
			}),
			runs,
		)
	})

	test('parts and score lie from 0 to 1, and the best comes first', () => {
		fc.assert(
			fc.property(asks(), (ask) => {
				const made = palettes(ask).palettes
				for (const { parts, score } of made)
					for (const part of [...Object.values(parts), score]) expect(part >= 0 && part <= 1).toBe(true)
				const scores = made.map(({ score }) => score)
				expect(scores).toEqual(scores.toSorted((a, b) => b - a))
			}),
			runs,
		)
	})

	test('the order in which materials come changes nothing, nor does asking again', () => {
		fc.assert(
			fc.property(asks(), (ask) => {
				expect(palettes({ ...ask, materials: ask.materials.toReversed() })).toEqual(palettes(ask))
			}),
			runs,
		)
	})

	test('a palette that nobody changed is judged as it was proposed', () => {
		fc.assert(
			fc.property(asks(), (ask) => {
				for (const { name: _, ...judged } of palettes(ask).palettes) expect(judge(judged.colours, ask)).toEqual(judged)
			}),
			runs,
		)
	})

	test('more in storage never lowers what a palette is worth', () => {
		fc.assert(
			fc.property(asks(), (ask) => {
				const stored = ask.materials.map((each) => ({ ...each, inStock: each.inStock + 3 }))
				const lasting = { ...ask, materials: ask.materials.map((each) => ({ ...each, had: [] })) }
				for (const { colours, score } of palettes(lasting).palettes)
					expect(judge(colours, { ...ask, materials: stored }).score).toBeGreaterThanOrEqual(score - 1e-12)
			}),
			runs,
		)
	})

	test('of two hundred materials three palettes are made like of ten', () => {
		fc.assert(
			fc.property(asks(0), drawnMaterials(200), (ask, materials) => {
				const full = { ...ask, materials }
				expect(palettes(full).palettes.length).toBe(mostApart(usable(full)))
			}),
			{ numRuns: 30 },
		)
	})
})
