import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { substitutes, type Wanted } from '@/lib/recipe/library/substitutes'
import { hex } from '@/lib/units/hex'
import { accent, branch, plant } from '../sample'

const wanted: Wanted = { month: 11, zone: null, light: 'part', lengths: 'cm' }

const dogwood = branch(1, 'red dogwood', { hex: hex('#8f2c2f'), lengthCm: 110 })
const alder = branch(2, 'red alder', { hex: hex('#912e30'), lengthCm: 109 })
const osier = branch(3, 'red osier', { hex: hex('#8a3034'), lengthCm: 180, inStock: 14 })
const birch = branch(4, 'white birch', { hex: hex('#d8d0c1'), lengthCm: 112 })
const kerria = branch(5, 'green kerria', { hex: hex('#4f7350'), lengthCm: 60, inStock: 3 })

const names = (found: ReturnType<typeof substitutes>) => found.map(({ material }) => material.name)

describe('substitutes', () => {
	test('what is in stock first, then the nearest in colour and height', () => {
		expect(names(substitutes(dogwood, [dogwood, birch, kerria, alder, osier], wanted))).toEqual([
			'red osier',
			'green kerria',
			'red alder',
			'white birch',
		])
	})

	test('as near in colour: the nearer in height', () => {
		const [near, far] = [branch(6, 'near', { lengthCm: 100 }), branch(7, 'far', { lengthCm: 60 })]
		expect(names(substitutes({ ...dogwood, hex: near.hex }, [far, near], wanted))).toEqual(['near', 'far'])
	})

	test('only of its role, and what can be had', () => {
		const late = branch(8, 'forced quince', { had: [2, 3] })
		const kept = { ...late, id: branch(9, 'x').id, name: 'kept quince', inStock: 2 }
		expect(names(substitutes(dogwood, [accent(10, 'globes'), late, kept], wanted))).toEqual(['kept quince'])
	})

	test('live plants that stand the winter and the light', () => {
		const old = plant(11, 'heath', { zone: 4 })
		const others = [
			plant(12, 'hardy', { zone: 5, wants: ['part'] }),
			plant(13, 'tender', { zone: 7 }),
			plant(14, 'of the sun', { zone: 4, wants: ['sun'] }),
		]
		expect(names(substitutes(old, others, { ...wanted, zone: 6 }))).toEqual(['hardy'])
		expect(names(substitutes(old, others, wanted))).toEqual(['hardy', 'tender'])
	})

	test.each([
		{
			name: 'in stock, another height',
			of: osier,
			reasons: ['14 in stock', 'the same colour to the eye', '70 cm taller'],
		},
		{ name: 'the same to the eye', of: alder, reasons: ['the same colour to the eye', 'as tall'] },
		{ name: 'another colour', of: birch, reasons: ['another colour', '2 cm taller'] },
		{ name: 'shorter', of: kerria, reasons: ['3 in stock', 'another colour', '50 cm shorter'] },
		{
			name: 'no length',
			of: branch(15, 'twig', { hex: hex('#8f2c2f'), lengthCm: null }),
			reasons: ['the same colour to the eye', 'one of the two has no length on its card'],
		},
		{
			name: 'with a hazard of its own',
			of: branch(16, 'winterberry', { hex: hex('#97332f'), lengthCm: 111, hazards: ['poisonous to pets'] }),
			reasons: ['a colour very near it', 'as tall', 'poisonous to pets'],
		},
	])('reasons: $name', ({ of, reasons }) => {
		expect(substitutes(dogwood, [of], wanted)[0]?.reasons).toEqual(reasons)
	})

	test('a hazard that it lacks is a reason too, and lengths in the studio’s unit', () => {
		const [found] = substitutes({ ...dogwood, hazards: ['poisonous to people'] }, [osier], { ...wanted, lengths: 'in' })
		expect(found?.reasons.slice(2)).toEqual(['27.6 in taller', 'not poisonous to people'])
	})

	test('an ornament has no height to compare', () => {
		expect(substitutes(accent(17, 'brass globes'), [accent(18, 'copper globes')], wanted)[0]?.reasons).toEqual([
			'the same colour to the eye',
		])
	})

	test('the order in which materials come does not matter', () => {
		const all = [alder, osier, birch, kerria]
		fc.assert(
			fc.property(fc.shuffledSubarray(all, { minLength: 4 }), (some) => {
				expect(names(substitutes(dogwood, some, wanted))).toEqual(names(substitutes(dogwood, all, wanted)))
			}),
		)
	})
})
