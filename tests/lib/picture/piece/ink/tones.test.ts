import Color from 'colorjs.io'
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { eyeOf, isGreen, isPaleBark, tones } from '@/lib/picture/piece/ink/tones'
import { hex } from '@/lib/units/hex'

// The judge is colorjs.io, which shares no code with the library that the tones are computed with.
const lightness = (of: string): number => new Color(of).to('oklch').coords[0] ?? 0
const apart = (a: string, b: string): number => new Color(a).deltaE(new Color(b), '2000')

const named = [
	{ name: 'fir', of: hex('#3d6147') },
	{ name: 'white birch', of: hex('#d8d0c1') },
	{ name: 'damson', of: hex('#6a2f4b') },
	{ name: 'copper', of: hex('#b4643a') },
	{ name: 'night navy', of: hex('#24365a') },
	{ name: 'frost', of: hex('#dbe6ea') },
]

describe('the tones of a colour', () => {
	test.each(named)('of $name run from pale to deep, each seen apart from the next', ({ of }) => {
		const { pale, light, base, dark, deep } = tones(of)
		const steps = [pale, light, base, dark, deep]
		for (const [index, step] of steps.slice(1).entries()) {
			expect(lightness(step)).toBeLessThan(lightness(steps[index] ?? ''))
			// 2.3 is a just noticeable difference in CIELAB (Mahy, Van Eycken, Oosterlinck 1994; from memory).
			expect(apart(step, steps[index] ?? '')).toBeGreaterThan(2.3)
		}
		expect(base).toBe(of)
	})

	test('of any colour are colours, none darker above a lighter one', () => {
		fc.assert(
			fc.property(fc.integer({ min: 0, max: 0xffffff }), (value) => {
				const { pale, light, base, dark, deep } = tones(hex(`#${value.toString(16).padStart(6, '0')}`))
				const of = [pale, light, base, dark, deep].map(lightness)
				// Black and white have nothing beyond them; 8 bits a channel round the rest.
				for (const [index, step] of of.slice(1).entries())
					expect(step).toBeLessThanOrEqual((of[index] ?? 0) + (step < 0.13 ? 0.13 : 0.004))
			}),
		)
	})
})

test.each([
	{ name: 'white birch', of: '#d8d0c1', is: true },
	{ name: 'bleached willow', of: '#efe7d6', is: true },
	{ name: 'gold-twig dogwood', of: '#cdb05a', is: false },
	{ name: 'red dogwood', of: '#8f2c2f', is: false },
	{ name: 'pink willow', of: '#f0b8c0', is: false },
])('$name: pale bark is $is', ({ of, is }) => {
	expect(isPaleBark(hex(of))).toBe(is)
})

test.each([
	{ name: 'box', of: '#4b6b3e', is: true },
	{ name: 'sage', of: '#8a9a78', is: true },
	{ name: 'bark', of: '#5d5148', is: false },
	{ name: 'grey', of: '#8d9799', is: false },
	{ name: 'gold', of: '#d9a52f', is: false },
	{ name: 'navy', of: '#24365a', is: false },
])('$name: green is $is', ({ of, is }) => {
	expect(isGreen(hex(of))).toBe(is)
})

test('a golden daisy has a brown eye, any other a golden one', () => {
	expect(eyeOf(hex('#e0a92e'))).toBe(eyeOf(hex('#f2c530')))
	expect(eyeOf(hex('#f2efe6'))).toBe(eyeOf(hex('#8a6ab0')))
	expect(eyeOf(hex('#e0a92e'))).not.toBe(eyeOf(hex('#f2efe6')))
})
