import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { difference } from '@/lib/colour/difference'
import { ranked } from '@/lib/colour/ranked'
import { hex } from '@/lib/units/hex'
import { hexes } from './arbitrary'
import { material, winter } from './material'

const names = (found: ReturnType<typeof ranked<(typeof winter)['copper']>>) =>
	found.map(({ material: { name } }) => name)

describe('materials for a colour', () => {
	test('the nearest first: what is copper for copper pans, what is brass for a brass handle', () => {
		const some = [winter.plum, winter.brass, winter.copper, winter.navy, winter.dogwood]
		expect(ranked(some, hex('#b5653a'))[0]?.material.name).toBe('copper globes')
		expect(ranked(some, hex('#b5653a')).at(-1)?.material.name).toBe('navy bows')
		expect(ranked(some, hex('#b3924c'))[0]?.material.name).toBe('brass globes')
	})

	test('of two as near as each other the one in storage, of two plainly unlike the nearer', () => {
		const bought = material(1, 'bought copper', '#b4643a')
		const kept = material(2, 'kept copper', '#b6673d', { inStock: 7 })
		const far = material(3, 'kept plum', '#6a2f4b', { inStock: 90 })
		expect(difference(kept.hex, bought.hex)).toBeLessThan(3)
		expect(names(ranked([bought, kept, far], bought.hex))).toEqual(['kept copper', 'bought copper', 'kept plum'])
	})

	test('of the same step, both or neither in storage, the nearer', () => {
		const exact = material(1, 'exact', '#808080')
		const near = material(2, 'near', '#838383')
		expect(names(ranked([near, exact], exact.hex))).toEqual(['exact', 'near'])
	})

	test('nothing for nothing', () => {
		expect(ranked([], hex('#123456'))).toEqual([])
	})

	const drawn = fc
		.array(fc.tuple(hexes, fc.integer({ min: 0, max: 2 })), { minLength: 1, maxLength: 12 })
		.map((all) => all.map(([colour, inStock], n) => material(n, `m${n}`, colour, { inStock })))

	test('all of them, each with its difference, in the same order however they come', () => {
		fc.assert(
			fc.property(drawn, hexes, fc.infiniteStream(fc.nat()), (all, colour, dice) => {
				const shuffled = all
					.map((each) => ({ each, at: dice.next().value }))
					.toSorted((a, b) => a.at - b.at)
					.map(({ each }) => each)
				const found = ranked(all, colour)
				expect(ranked(shuffled, colour)).toEqual(found)
				expect(found.map((each) => each.material.id).toSorted()).toEqual(all.map((each) => each.id))
				for (const each of found) expect(each.difference).toBe(difference(each.material.hex, colour))
			}),
		)
	})

	test('nothing comes before what is nearer by a step, and in storage nothing before what is as near', () => {
		fc.assert(
			fc.property(drawn, hexes, (all, colour) => {
				const found = ranked(all, colour)
				for (const [index, later] of found.entries())
					for (const earlier of found.slice(0, index)) {
						expect(earlier.difference).toBeLessThan(later.difference + 3)
						const isAsNear = Math.floor(earlier.difference / 3) === Math.floor(later.difference / 3)
						if (isAsNear && earlier.material.inStock === 0) expect(later.material.inStock).toBe(0)
					}
			}),
		)
	})
})

describe('the difference of two colours', () => {
	test('is the same both ways, nothing for the same colour, and 100 from black to white', () => {
		fc.assert(
			fc.property(hexes, hexes, (a, b) => {
				expect(difference(a, b)).toBeCloseTo(difference(b, a), 9)
				expect(difference(a, a)).toBe(0)
				if (a !== b) expect(difference(a, b)).toBeGreaterThan(0)
				expect(difference(a, b)).toBeLessThan(150)
			}),
			{ numRuns: 500 },
		)
		expect(difference(hex('#000000'), hex('#ffffff'))).toBeCloseTo(100, 9)
	})
})
