import fc from 'fast-check'
import type { Browser, Page } from 'playwright'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { walls as materials, shapes, stands } from '@/lib/container/card'
import { wallKinds } from '@/lib/container/site'
import { picture } from '@/lib/picture/picture'
import type { Scene, SceneLine } from '@/lib/picture/scene'
import { forms } from '@/lib/recipe/look'
import { roles } from '@/lib/recipe/material'
import { hex } from '@/lib/units/hex'
import { potOf } from '../../picture/vessels'
import { anyScene } from './any-scene'
import { openBrowser } from './browser'

const hostile = '"/><script>steal()</script>&nbsp;]]> onload=x'

const lineOf = (form: SceneLine['form'], role: SceneLine['role'], more: Partial<SceneLine> = {}): SceneLine => ({
	name: hostile,
	role,
	form,
	count: 3,
	hex: hex('#8a5a3c'),
	secondHex: hex('#5d8a45'),
	lengthCm: 42,
	acrossCm: 17,
	...more,
})

const sceneOf = (pots: Scene['pots'], more: Partial<Scene> = {}): Scene => ({
	quarter: 'winter',
	hour: 'evening',
	wall: { kind: 'brick', hex: hex('#8b5344') },
	door: hex('#20344f'),
	measure: 'in',
	pots,
	...more,
})

const draw = (scene: Scene) => picture(scene, { ratio: 1.5 })

/** What is wrong with the text of a picture, before anything reads it. */
function faults(svg: string): string[] {
	const ids = new Set([...svg.matchAll(/ id="([^"]*)"/g)].map(([, id]) => id))
	const asked = [...svg.matchAll(/(?:href="|url\()#([^")]*)/g)].map(([, id]) => id)
	return [
		...(svg.match(/NaN|undefined|Infinity|null|\[object|--\d|e[+-]\d/g) ?? []),
		...(svg.match(/<script|<foreignObject|<style|<image|<a |javascript:| on\w+=| style=/g) ?? []),
		...(svg.match(/https?:[^"]*/g) ?? []).filter((address) => address !== 'http://www.w3.org/2000/svg'),
		...asked.filter((id) => !ids.has(id)).map((id) => `nothing is called ${id}`),
	]
}

let browser: Browser
let page: Page
beforeAll(async () => {
	browser = await openBrowser()
	page = await browser.newPage()
})
afterAll(() => browser.close())

/** Those that a browser’s own parser refuses as XML, and its reasons. */
const refused = (svgs: readonly string[]) =>
	page.evaluate(
		(texts) =>
			texts.flatMap((text) => {
				const read = new DOMParser().parseFromString(text, 'image/svg+xml')
				return read.querySelector('parsererror')?.textContent ?? []
			}),
		svgs,
	)

describe('every picture is whole', () => {
	test('every form in every role, alone', async () => {
		const drawn = forms.flatMap((form) => roles.map((role) => draw(sceneOf([potOf('round', [lineOf(form, role)])]))))
		expect(drawn.flatMap(faults)).toEqual([])
		expect(await refused(drawn)).toEqual([])
	})

	test('every form together in every shape before every wall, in every finish and stand', async () => {
		const drawn = shapes.flatMap((shape, row) =>
			wallKinds.map((kind, column) => {
				const lines = forms.map((form, index) => lineOf(form, roles[(row + column + index) % roles.length] ?? 'accent'))
				const [madeOf, stand] = [
					materials[(row + column) % materials.length],
					stands[(row * 2 + column) % stands.length],
				]
				const pot = potOf(shape, lines, { madeOf: madeOf ?? 'metal', stands: stand ?? 'all round' })
				return draw(sceneOf([pot], { wall: { kind, hex: hex('#88837a') }, hour: row % 2 === 0 ? 'day' : 'evening' }))
			}),
		)
		expect(drawn).toHaveLength(40)
		expect(drawn.flatMap(faults)).toEqual([])
		expect(await refused(drawn)).toEqual([])
	})

	test('whatever the cards say', async () => {
		const drawn: string[] = []
		fc.assert(
			fc.property(anyScene, fc.constantFrom(0, 0.3, 1.5, 40), (scene, ratio) => {
				const svg = picture(scene, { ratio })
				drawn.push(svg)
				expect(faults(svg)).toEqual([])
			}),
			{ numRuns: 60 },
		)
		expect(await refused(drawn)).toEqual([])
	}, 60_000)
})

describe('what a picture never holds', () => {
	test('a name, however hostile, or any word but the figures of a measure', () => {
		const lines = forms.map((form) => lineOf(form, 'filler'))
		const pots = shapes.map((shape) => ({ ...potOf(shape, lines), name: hostile }))
		const svg = draw(sceneOf(pots))
		expect(svg).not.toMatch(/steal|nbsp|\]\]|onload/)
		const texts = [...svg.matchAll(/>([^<>]+)</g)].map(([, text]) => text)
		expect(texts.length).toBeGreaterThan(3)
		expect(texts.filter((text) => !/^(\d+|in)$/.test(text ?? ''))).toEqual([])
		expect(draw(sceneOf(pots, { measure: 'none' }))).not.toContain('<text')
	})

	test('more of a line than can be seen: the rest is counted, not drawn', () => {
		const of = (count: number) =>
			draw(
				sceneOf([
					potOf(
						'round',
						forms.map((form) => lineOf(form, 'filler', { count })),
					),
				]),
			)
		const uses = (svg: string) => svg.match(/<use /g)?.length ?? 0
		expect(uses(of(9999))).toBeLessThan(uses(of(12)) * 3)
		expect(of(9999).length).toBeLessThan(250_000)
	})
})
