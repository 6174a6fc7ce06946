import type { Browser, Page } from 'playwright'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { type Shape, shapes, type Vessel } from '@/lib/container/card'
import { picture } from '@/lib/picture/picture'
import type { Scene, SceneLine, ScenePot } from '@/lib/picture/scene'
import type { Form } from '@/lib/recipe/look'
import { hex } from '@/lib/units/hex'
import { openBrowser } from './browser'

const measures: Record<Shape, Partial<Vessel>> = {
	round: { topCm: 46, bottomCm: 33, heightCm: 51 },
	square: { topCm: 61, topDepthCm: 60, bottomCm: 51, bottomDepthCm: 50, heightCm: 62 },
	rectangular: { topCm: 76, topDepthCm: 36, bottomCm: 70, bottomDepthCm: 33, heightCm: 52 },
	bowl: { topCm: 66, bottomCm: 24, heightCm: 28 },
	trough: { topCm: 102, topDepthCm: 35, bottomCm: 97, bottomDepthCm: 34, heightCm: 47 },
	'window box': { topCm: 91, topDepthCm: 23, bottomCm: 89, bottomDepthCm: 22, heightCm: 21 },
	urn: { topCm: 53, bottomCm: 29, heightCm: 56 },
	column: { topCm: 41, topDepthCm: 40, bottomCm: 37, bottomDepthCm: 36, heightCm: 86 },
}

const potOf = (shape: Shape, lines: readonly SceneLine[], more: Partial<Vessel> = {}): ScenePot => ({
	name: 'the pot',
	vessel: {
		shape,
		topCm: 40,
		topDepthCm: null,
		bottomCm: 30,
		bottomDepthCm: null,
		heightCm: 45,
		wallCm: 1,
		headspaceCm: 5,
		soilDepthCm: null,
		...measures[shape],
		...more,
	},
	madeOf: 'terracotta',
	colour: hex('#b5694a'),
	stands: 'all round',
	sillToGlassCm: null,
	lines,
})

const stem = (form: Form, lengthCm: number | null): SceneLine => ({
	name: 'a stem',
	role: 'thriller',
	form,
	count: 1,
	hex: hex('#8a5a3c'),
	secondHex: null,
	lengthCm,
	acrossCm: 20,
})

const sceneOf = (pots: readonly ScenePot[], door: Scene['door'] = null): Scene => ({
	quarter: 'summer',
	hour: 'day',
	wall: { kind: 'stucco', hex: hex('#d8cfbf') },
	door,
	measure: 'none',
	pots,
})

type Box = { readonly x: number; readonly y: number; readonly width: number; readonly height: number }

let browser: Browser
let page: Page
beforeAll(async () => {
	browser = await openBrowser()
	page = await browser.newPage()
})
afterAll(() => browser.close())

/** Boxes of the pots of a picture as the browser lays them out, in cm; without a door nothing else is a group. */
async function potsOf(scene: Scene): Promise<Box[]> {
	await page.setContent(picture(scene, { ratio: 1.5 }))
	return page.evaluate(() =>
		[...document.querySelectorAll('svg > g')].map((group) => {
			const { x, y, width, height } = group instanceof SVGGraphicsElement ? group.getBBox() : new DOMRect()
			return { x, y, width, height }
		}),
	)
}

const only = async (pot: ScenePot): Promise<Box> => {
	const boxes = await potsOf(sceneOf([pot]))
	const [box] = boxes.toReversed()
	if (box === undefined) throw new Error('to-scale.test: no pot was drawn')
	return box
}

/** Figures are written to the millimetre. */
const millimetreCm = 0.11
/** How much of a depth shows as height: the rim's far half rises over its middle, the foot's near half falls. */
const tilt = 0.2

describe('vessels', () => {
	test.each(shapes.filter((shape) => shape !== 'window box'))(
		'%s: as wide and as high as its card says',
		async (shape) => {
			const pot = potOf(shape, [])
			const { topCm, topDepthCm, bottomCm, bottomDepthCm, heightCm } = pot.vessel
			const box = await only(pot)
			expect(Math.abs(box.width - topCm)).toBeLessThan(millimetreCm * 2)
			expect(Math.abs(box.x + box.width / 2)).toBeLessThan(millimetreCm)
			const seen = heightCm + (((topDepthCm ?? topCm) + (bottomDepthCm ?? bottomCm)) / 2) * tilt
			expect(Math.abs(box.height - seen)).toBeLessThan(millimetreCm * 3)
		},
	)

	test('a window box is as wide as its card says', async () => {
		expect(Math.abs((await only(potOf('window box', []))).width - 91)).toBeLessThan(millimetreCm * 2)
	})

	test('one that is wider at its foot is as wide as its foot', async () => {
		const box = await only(potOf('round', [], { topCm: 31, bottomCm: 44 }))
		expect(Math.abs(box.width - 44)).toBeLessThan(millimetreCm * 2)
	})
})

describe('thrillers', () => {
	// Length, less max(15, a fifth of what shows), less the headspace of 5 (common practice, no published source).
	test.each<{ form: Form; lengthCm: number; above: number }>([
		{ form: 'straight stems', lengthCm: 80, above: 60 },
		{ form: 'straight stems', lengthCm: 87, above: 67 },
		{ form: 'twisting stems', lengthCm: 78, above: 58 },
		{ form: 'logs', lengthCm: 74, above: 54 },
		{ form: 'evergreen top', lengthCm: 70, above: 50 },
		{ form: 'grass', lengthCm: 76, above: 71 },
		{ form: 'sword leaves', lengthCm: 63, above: 58 },
	])('$form of $lengthCm cm rise $above cm above the rim', async ({ form, lengthCm, above }) => {
		const pot = potOf('round', [stem(form, lengthCm)])
		const { y } = await only(pot)
		expect(Math.abs(-y - pot.vessel.heightCm - above)).toBeLessThan(1)
	})

	test('a stem far too long is cut to what looks best: 1.5 × √(height × inner width) above the rim', async () => {
		const { y } = await only(potOf('round', [stem('logs', 190)]))
		expect(Math.abs(-y - 51 - 1.5 * Math.sqrt(51 * 44))).toBeLessThan(1)
	})

	test('one that nobody has measured stands as high as looks best', async () => {
		const { y } = await only(potOf('round', [stem('logs', null)]))
		expect(Math.abs(-y - 51 - 1.5 * Math.sqrt(51 * 44))).toBeLessThan(1)
	})
})

describe('a place', () => {
	test('all its pots are drawn at one scale', async () => {
		const pots = [potOf('round', []), potOf('column', []), potOf('trough', [])]
		const widths = (await potsOf(sceneOf(pots))).map(({ width }) => width)
		expect(widths.map(Math.round).toSorted((a, b) => a - b)).toEqual([41, 46, 102])
	})

	test('the measure is true: its figures stand where they say', async () => {
		await page.setContent(picture({ ...sceneOf([potOf('column', [stem('logs', 80)])]), measure: 'in' }, { ratio: 1.5 }))
		const at = await page.evaluate(() =>
			[...document.querySelectorAll('text')].map((text) => ({
				says: text.textContent,
				y: Number(text.getAttribute('y')),
			})),
		)
		const foot = at.find(({ says }) => says === 'in')?.y ?? Number.NaN
		const figures = at.filter(({ says }) => says !== 'in')
		expect(figures.length).toBeGreaterThan(3)
		for (const { says, y } of figures) expect(Math.abs((foot - y) / 2.54 - Number(says))).toBeLessThan(0.1)
	})
})
