import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { shapes, usualWallCm } from '@/lib/container/card'
import { sketchOf, type TypedCard } from '@/lib/container/measured/sketch'
import { openingWords, sketchWords } from '@/lib/container/measured/told'
import { outline } from '@/lib/container/outline'
import { containerForm } from '@/lib/forms/places/card-form'
import { read } from '@/lib/forms/read'
import { problemOf } from '../problem-of'

const pot: TypedCard = { shape: 'round', wall: 'resin', topCm: '18', bottomCm: '13 1/2', heightCm: '16 1/16' }
const box: TypedCard = {
	shape: 'window box',
	wall: 'wood',
	topCm: '36',
	topDepthCm: '8',
	bottomCm: '34 1/2',
	heightCm: '7 3/4',
}

describe('a card as it is typed', () => {
	test('measured whole, it is the vessel that will be kept', () => {
		const { vessel, isSound, faults, madeUp } = sketchOf(pot, 'in')
		expect(vessel).toMatchObject({ topCm: 45.72, bottomCm: 34.29, heightCm: 40.79875, wallCm: 1, headspaceCm: 5 })
		expect([isSound, faults, [...madeUp]]).toEqual([true, [], []])
	})

	test('a box takes its depths from what was typed, or from its front', () => {
		const { vessel } = sketchOf(box, 'in')
		expect([vessel.topDepthCm, vessel.bottomDepthCm]).toEqual([20.32, 19.47333])
	})

	test('nothing typed yet: the usual shape, nothing wrong, and nothing to compute with', () => {
		const { vessel, isSound, faults, madeUp } = sketchOf({ shape: 'urn' }, 'in')
		expect([isSound, faults, [...madeUp]]).toEqual([false, [], ['topCm', 'bottomCm', 'heightCm']])
		expect([vessel.topCm, vessel.bottomCm, vessel.heightCm]).toEqual([51, 31, 61])
	})

	test('one measure typed: the rest in proportion', () => {
		const { vessel, madeUp } = sketchOf({ shape: 'round', topCm: '92' }, 'cm')
		expect([vessel.bottomCm, vessel.heightCm]).toEqual([68, 82])
		expect([...madeUp]).toEqual(['bottomCm', 'heightCm'])
	})

	test.each<{ name: string; typed: TypedCard; field: string; says: RegExp }>([
		{ name: 'walls', typed: { ...pot, wallCm: '6 3/4' }, field: 'wallCm', says: /^The walls are thicker/ },
		{ name: 'a headspace', typed: { ...pot, headspaceCm: '16' }, field: 'headspaceCm', says: /no soil would fit/ },
		{ name: 'nothing', typed: { ...pot, bottomCm: '0' }, field: 'bottomCm', says: /is nothing/ },
		{ name: 'less than nothing', typed: { ...pot, heightCm: '-4' }, field: 'heightCm', says: /less than nothing/ },
		{ name: 'a misread tape', typed: { ...pot, topCm: '460' }, field: 'topCm', says: /another unit/ },
		{ name: 'words', typed: { ...pot, soilDepthCm: 'deep' }, field: 'soilDepthCm', says: /^Give a measure such as/ },
		{ name: 'a number that is none', typed: { ...pot, topCm: '1e400' }, field: 'topCm', says: /^Give a measure/ },
		{ name: 'while others are still to be typed', typed: { bottomCm: '-2' }, field: 'bottomCm', says: /less than/ },
	])('$name: a sentence beside its measure, and still a drawing', ({ typed, field, says }) => {
		const { faults, isSound, vessel } = sketchOf(typed, 'in')
		expect(faults.map((fault) => fault.field)).toEqual([field])
		expect(faults[0]?.says).toMatch(says)
		expect(isSound).toBe(false)
		expect(outline(vessel).every(({ halfCm, heightCm }) => halfCm >= 0 && Number.isFinite(halfCm + heightCm))).toBe(
			true,
		)
	})

	test('a pot wider at its bottom is one', () => {
		expect(sketchOf({ ...pot, bottomCm: '22' }, 'in')).toMatchObject({ isSound: true, faults: [] })
	})
})

describe('laws', () => {
	const text = fc.oneof(
		fc.constantFrom('', '0', '-3', 'NaN', '1e400', '--5', '１８', 'deep', '999', '0.01', '46 cm', '18½'),
		fc.integer({ min: 1, max: 800 }).map((n) => String(n / 16)),
	)
	const cards = fc.record({
		shape: fc.constantFrom(...shapes),
		wall: fc.constantFrom('metal', 'resin', 'wood', 'terracotta', 'cast stone'),
		...{ topCm: text, topDepthCm: text, bottomCm: text, bottomDepthCm: text, heightCm: text },
		...{ wallCm: text, headspaceCm: text, soilDepthCm: text, sillToGlassCm: text },
	})
	const id = '00000000-0000-7000-8000-00000000a001'
	const others = {
		...{ once: id, client: id, place: id, container: '', name: 'Left urn', colour: '#3a3d40', owner: 'client' },
		...{ light: 'sun', waterer: 'client', stands: 'all round', limitedWeight: 'none', walkLeftCm: '', vesselKg: '' },
	}

	const form = containerForm('in')

	test('what is drawn as sound is what the server takes, and is kept as it was drawn', () => {
		fc.assert(
			fc.property(cards, (typed) => {
				const { vessel, isSound, faults } = sketchOf(typed, 'in')
				const kept = read(form, { ...typed, ...others })
				expect(kept.ok).toBe(isSound)
				if (kept.ok) expect(kept.value).toMatchObject(vessel)
				// Every sentence of the server's is one that was told while it was typed.
				const filled = new Set<string>(Object.entries(typed).flatMap(([name, value]) => (value === '' ? [] : [name])))
				const told = kept.ok ? [] : Object.entries(kept.errors).filter(([name]) => filled.has(name))
				for (const [field, says] of told) expect(faults).toContainEqual({ field, says })
			}),
			{ numRuns: 500 },
		)
	})

	test('whatever is typed can be drawn and told in words', () => {
		fc.assert(
			fc.property(cards, (typed) => {
				const sketch = sketchOf(typed, 'in')
				for (const cm of [sketch.vessel.topCm, sketch.vessel.bottomCm, sketch.vessel.heightCm])
					expect(cm > 0 && Number.isFinite(cm)).toBe(true)
				if (sketch.isSound) expect(problemOf(sketch.vessel)).toEqual([])
				expect(sketchWords(sketch, 'in')).not.toMatch(/NaN|Infinity|undefined|null/)
			}),
			{ numRuns: 500 },
		)
	})
})

describe('in words', () => {
	test.each([
		{
			name: 'a pot',
			typed: pot,
			is: 'Round pot, straight or tapered, cut open from the front and seen from above: 18 in across at the rim, 13.5 in across at the foot and 16.0625 in high. Inside, its opening is 17.2 in across and its soil 13.7 in deep.',
		},
		{
			name: 'not measured yet',
			typed: { shape: 'bowl' },
			is: 'Low bowl, rounded below, cut open from the front and seen from above: not measured yet.',
		},
	])('$name', ({ typed, is }) => {
		expect(sketchWords(sketchOf(typed, 'in'), 'in')).toBe(is)
	})

	test('the opening of a box by both its sides', () => {
		expect(openingWords(sketchOf(box, 'in').vessel, 'in')).toBe('34.4 by 6.4 in')
		expect(openingWords({ ...sketchOf(box, 'in').vessel, wallCm: usualWallCm.metal }, 'cm')).toBe('90.8 by 19.7 cm')
	})
})
