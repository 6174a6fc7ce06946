import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { picture } from '@/lib/picture/picture'
import type { Scene } from '@/lib/picture/scene'
import { sceneHash } from '@/lib/picture/scene-hash'
import { hex } from '@/lib/units/hex'
import { palettes } from '../../picture/lines'
import { sheets } from '../../picture/scenes'
import { potOf } from '../../picture/vessels'
import { anyScene } from './any-scene'

const frame = { ratio: 1.5 }
const copper = palettes.winter['copper and plum'] ?? []
const scene: Scene = {
	quarter: 'winter',
	hour: 'day',
	wall: { kind: 'clapboard', hex: hex('#5f7488') },
	door: hex('#7d3a2c'),
	measure: 'none',
	pots: [potOf('round', copper), potOf('urn', copper)],
}

/** Of each `<use>`, what it shows and where. */
const uses = (svg: string): string[] => svg.match(/<use [^>]*transform[^>]*>/g) ?? []
const places = (svg: string): string[] => uses(svg).map((use) => use.replace(/href="[^"]*"/, ''))

describe('a picture follows from its scene alone', () => {
	test('the same scene gives the same picture, to the letter', () => {
		for (const sheet of sheets)
			expect(picture(structuredClone(sheet.scene), sheet.frame)).toBe(picture(sheet.scene, sheet.frame))
	})

	test('the order in which lines were written does not matter', () => {
		fc.assert(
			fc.property(anyScene, (any) => {
				const turned = { ...any, pots: any.pots.map((pot) => ({ ...pot, lines: pot.lines.toReversed() })) }
				expect(picture(turned, frame)).toBe(picture(any, frame))
			}),
			{ numRuns: 40 },
		)
	})

	test('a palette changes colours and moves nothing', () => {
		const recoloured = copper.map((line) => ({ ...line, hex: hex('#3f6b50') }))
		const other = { ...scene, pots: [potOf('round', recoloured), potOf('urn', recoloured)] }
		expect(places(picture(other, frame))).toEqual(places(picture(scene, frame)))
		expect(picture(other, frame)).not.toBe(picture(scene, frame))
	})

	test('twins are planted by hand: alike, and not the same', () => {
		const svg = picture({ ...scene, pots: [potOf('round', copper), potOf('round', copper)] }, frame)
		const [, first = '', second = ''] = svg.split(/<g transform="translate\([^)]*\)"><path d="M-23 -51/)
		expect(uses(first).length).toBeGreaterThan(40)
		expect(uses(first)).not.toEqual(uses(second))
	})

	test('an evening has lights only where lights hang', () => {
		const lit = [...copper, ...(palettes.winter['brass and navy'] ?? []).filter(({ form }) => form === 'lights')]
		const evening = { ...scene, hour: 'evening' } as const
		const lamps = (pots: Scene['pots']) => picture({ ...evening, pots }, frame).includes('#ffc873')
		expect(lamps([potOf('round', lit)])).toBe(true)
		expect(lamps([potOf('round', copper)])).toBe(false)
		expect(picture({ ...scene, pots: [potOf('round', lit)] }, frame)).not.toContain('#ffc873')
	})
})

describe('the paper', () => {
	const boxOf = (svg: string) => (/viewBox="([^"]*)"/.exec(svg)?.[1] ?? '').split(' ').map(Number)

	test.each([0.72, 1.05, 1.27, 1.5, 2.1, 2.6])('is %s times as wide as high', (ratio) => {
		for (const zoom of ['place', 'pot'] as const) {
			const [, , width = 0, height = 1] = boxOf(picture(scene, { ratio, zoom }))
			expect(Math.abs(width / height - ratio)).toBeLessThan(0.005)
		}
	})

	test('shows every pot of a place whole, to its tip', () => {
		for (const { scene: any, frame: asked } of sheets.filter(({ frame }) => frame.zoom !== 'pot')) {
			const [left = 0, top = 0, width = 0] = boxOf(picture(any, asked))
			const highest = Math.max(0, ...any.pots.map(({ vessel }) => vessel.heightCm))
			expect(-top).toBeGreaterThan(highest + 20)
			expect(left).toBeLessThan(0)
			expect(left + width).toBeGreaterThan(0)
		}
	})
})

describe('what a scene is known by', () => {
	test('changes with anything that is seen or said of it, and with nothing else', () => {
		const renamed = { ...scene, pots: scene.pots.map((pot) => ({ ...pot, name: 'elsewhere' })) }
		const hashes = [scene, { ...scene, hour: 'evening' as const }, { ...scene, measure: 'in' as const }, renamed]
		expect(new Set(hashes.map(sceneHash)).size).toBe(4)
		expect(sceneHash(structuredClone(scene))).toBe(sceneHash(scene))
		const { pots, ...rest } = scene
		expect(sceneHash({ pots, ...rest })).toBe(sceneHash(scene))
	})
})
