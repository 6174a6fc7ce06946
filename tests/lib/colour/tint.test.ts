import Color from 'colorjs.io'
import { converter } from 'culori'
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { grounds, markOn, tint, washOn } from '@/lib/colour/tint'
import { type Hex, hex } from '@/lib/units/hex'

// WCAG 2.2: contrast is (L₁ + 0.05) ÷ (L₂ + 0.05); 1.4.3 asks for 4.5 to 1 of text, 1.4.6 for 7 to 1. The judge is
// colorjs.io, which shares no code with the library that the tint is computed with.
/** The lesser of what the colours give and of what they give on a screen of 8 bits a channel. */
function contrast(a: string, b: string): number {
	const eightBits = (of: string) => new Color(new Color(of).to('srgb').toString({ format: 'hex' }))
	const exact = new Color(a).contrast(new Color(b), 'WCAG21')
	return Math.min(exact, eightBits(a).contrast(eightBits(b), 'WCAG21'))
}

const themes = ['light', 'dusk'] as const
const inks = { light: 'oklch(0.25 0.03 163)', dusk: 'oklch(0.94 0.012 155)' } as const

const colours = fc
	.integer({ min: 0, max: 0xffffff })
	.map((value): Hex => hex(`#${value.toString(16).padStart(6, '0')}`))

const named = [
	{ name: 'black', of: hex('#000000') },
	{ name: 'white', of: hex('#ffffff') },
	{ name: 'a grey of the ground', of: hex('#f7fbf9') },
	{ name: 'pure yellow', of: hex('#ffff00') },
	{ name: 'pure blue', of: hex('#0000ff') },
	{ name: 'kiln copper', of: hex('#b4643a') },
	{ name: 'slate', of: hex('#5f7488') },
	{ name: 'night navy', of: hex('#24365a') },
]

describe('a mark', () => {
	test.each(named)('of $name can be read on both grounds', ({ of }) => {
		for (const theme of themes) expect(contrast(markOn(theme, of), grounds[theme])).toBeGreaterThanOrEqual(4.5)
	})

	test('of any colour can be read on both grounds', () => {
		fc.assert(
			fc.property(colours, fc.constantFrom(...themes), (of, theme) => {
				expect(contrast(markOn(theme, of), grounds[theme])).toBeGreaterThanOrEqual(4.5)
			}),
			{ numRuns: 1000 },
		)
	})

	test('is the colour itself where that can be read already', () => {
		expect(markOn('light', hex('#24365a'))).toBe('#24365a')
		expect(markOn('dusk', hex('#dbe6ea'))).toBe('#dbe6ea')
	})

	test('goes no further from its colour than it must: white becomes a grey, not black, and black no white', () => {
		const lightness = (of: string) => new Color(of).to('oklch').coords[0] ?? 0
		const near = [
			{ a: markOn('light', hex('#ffffff')), b: markOn('light', hex('#fefefe')) },
			{ a: markOn('dusk', hex('#000000')), b: markOn('dusk', hex('#010101')) },
		]
		for (const { a, b } of near) expect(Math.abs(lightness(a) - lightness(b))).toBeLessThan(0.05)
	})

	test('keeps its hue', () => {
		const hue = (of: Hex) => converter('oklch')(of)?.h
		fc.assert(
			fc.property(colours, fc.constantFrom(...themes), (of, theme) => {
				const [before, mark] = [converter('oklch')(of), converter('oklch')(markOn(theme, of))]
				fc.pre((before?.c ?? 0) > 0.05 && (mark?.c ?? 0) > 0.05)
				const turn = Math.abs((hue(of) ?? 0) - (mark?.h ?? 0))
				expect(Math.min(turn, 360 - turn)).toBeLessThan(6)
			}),
			{ numRuns: 500 },
		)
	})
})

describe('a wash', () => {
	test.each(named)('of $name keeps ink readable', ({ of }) => {
		for (const theme of themes) expect(contrast(washOn(theme, of), inks[theme])).toBeGreaterThanOrEqual(7)
	})

	test('of any colour keeps ink readable, better than enhanced contrast asks for', () => {
		fc.assert(
			fc.property(colours, fc.constantFrom(...themes), (of, theme) => {
				expect(contrast(washOn(theme, of), inks[theme])).toBeGreaterThanOrEqual(7)
			}),
			{ numRuns: 1000 },
		)
	})
})

test('a page takes its wash from the wall and its mark from the accent', () => {
	const [wall, accent] = [hex('#5f7488'), hex('#b5653a')]
	expect(tint(wall, accent)).toEqual({
		light: { mark: markOn('light', accent), wash: washOn('light', wall) },
		dusk: { mark: markOn('dusk', accent), wash: washOn('dusk', wall) },
	})
	expect(tint(wall, accent)).not.toEqual(tint(accent, wall))
})
