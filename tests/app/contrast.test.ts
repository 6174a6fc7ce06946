import { readFileSync } from 'node:fs'
import Color from 'colorjs.io'
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { grounds, washOn } from '@/lib/colour/tint'
import { hex } from '@/lib/units/hex'

const css = readFileSync(new URL('../../app/ui/styles/tokens.css', import.meta.url), 'utf8')

/** The custom properties of a block, by name. */
function tokens(block: string): Map<string, string> {
	return new Map([...block.matchAll(/--([a-z-]+):\s*([^;]+);/g)].map(([, name = '', value = '']) => [name, value]))
}

const [light = '', dusk = ''] = css.split('@media (prefers-color-scheme: dark)')
const themes = { light: tokens(light), dusk: tokens(dusk) }
type Theme = keyof typeof themes

function token(theme: Theme, name: string): Color {
	const value = themes[theme].get(name)
	if (value === undefined) throw new Error(`tokens.css has no --${name} in its ${theme} block`)
	return new Color(value)
}

/** As a screen shows it: what lies outside sRGB cut off at its edge, or led back to it as CSS Color 4 asks. */
const shown = (color: Color, method: 'clip' | 'css') => color.to('srgb').toGamut({ method })

/** The lesser of the two. */
function contrast(theme: Theme, a: string, b: string): number {
	const [of, on] = [token(theme, a), token(theme, b)]
	const as = (method: 'clip' | 'css') => shown(of, method).contrast(shown(on, method), 'WCAG21')
	return Math.min(as('clip'), as('css'))
}

const onGround = ['ink', 'soft', 'warn', 'was', 'spring', 'summer', 'autumn', 'winter']
const textPairs: [text: string, ground: string][] = [
	...onGround.map((name): [string, string] => [name, 'ground']),
	['ink', 'raised'],
	['soft', 'raised'],
	['warn', 'raised'],
	['ink', 'warn-ground'],
	['warn', 'warn-ground'],
	['ink-ground', 'ink'],
]
/** Borders of what is filled in, the ring of focus, and the marks of seasons. */
const markPairs: [mark: string, ground: string][] = [
	['edge', 'ground'],
	['focus', 'ground'],
	['soil', 'ground'],
	...['spring', 'summer', 'autumn', 'winter'].map((name): [string, string] => [name, 'ground']),
]

describe.each(['light', 'dusk'] as const)('the colours of the site, %s', (theme) => {
	// WCAG 2.2, success criterion 1.4.3 Contrast (Minimum), level AA: 4.5 to 1. Judged by colorjs.io.
	test.each(textPairs)('--%s can be read on --%s (1.4.3)', (text, ground) => {
		expect(contrast(theme, text, ground)).toBeGreaterThanOrEqual(4.5)
	})

	// WCAG 2.2, success criterion 1.4.11 Non-text Contrast, level AA: 3 to 1.
	test.each(markPairs)('--%s can be made out on --%s (1.4.11)', (mark, ground) => {
		expect(contrast(theme, mark, ground)).toBeGreaterThanOrEqual(3)
	})

	test('--ink-ground can be read on the loudest button under the pointer (1.4.3)', () => {
		const hovered = token(theme, 'ink').mix(token(theme, 'ground'), 0.14, { space: 'oklch' })
		expect(hovered.contrast(token(theme, 'ink-ground'), 'WCAG21')).toBeGreaterThanOrEqual(4.5)
	})

	// The head of a client's page stands on a wash of their wall's colour.
	test.each(['ink', 'soft'])('--%s can be read on the wash of any wall (1.4.3)', (text) => {
		fc.assert(
			fc.property(fc.integer({ min: 0, max: 0xffffff }), (value) => {
				const wash = washOn(theme, hex(`#${value.toString(16).padStart(6, '0')}`))
				expect(shown(token(theme, text), 'css').contrast(new Color(wash), 'WCAG21')).toBeGreaterThanOrEqual(4.5)
			}),
			{ numRuns: 300 },
		)
	})

	test('a client’s tint is computed for this very ground', () => {
		expect(themes[theme].get('ground')).toBe(grounds[theme])
	})
})

test('both themes have the same tokens', () => {
	expect([...themes.dusk.keys()]).toEqual([...themes.light.keys()])
	expect(themes.light.size).toBeGreaterThan(12)
})
