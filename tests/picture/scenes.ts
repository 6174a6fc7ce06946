import { walls as materials, type Shape, shapes } from '@/lib/container/card'
import { type WallKind, wallKinds } from '@/lib/container/site'
import type { Frame } from '@/lib/picture/place/frame'
import type { Scene, ScenePot } from '@/lib/picture/scene'
import { type Quarter, quarters } from '@/lib/season/season'
import { hex } from '@/lib/units/hex'
import { palettes } from './lines'
import { potOf } from './vessels'

export type Sheet = { readonly name: string; readonly scene: Scene; readonly frame: Frame }

type Painted = readonly [wall: string, door: string]

const walls: Record<WallKind, readonly Painted[]> = {
	clapboard: [
		['#5f7488', '#7d3a2c'],
		['#e9e6dc', '#2f4a3c'],
		['#8b9a7a', '#3a2a26'],
		['#2f3b44', '#c79a3c'],
	],
	fieldstone: [
		['#88837a', '#5a2c22'],
		['#a39a88', '#2c4a5a'],
		['#6f6f72', '#7a2f3a'],
		['#9a8f80', '#20344f'],
	],
	stucco: [
		['#d8cfbf', '#20344f'],
		['#cdd5cf', '#5d6a8b'],
		['#c78f6a', '#3f5a4a'],
		['#f0e9dc', '#8a3a2c'],
	],
	brick: [
		['#8b5344', '#e9e6df'],
		['#9b5f4a', '#20344f'],
		['#6f4a40', '#2c2f2c'],
		['#b5866a', '#3f5a4a'],
	],
	'shop glass': [
		['#3f5a60', '#7d3a2c'],
		['#3b3f42', '#34383a'],
		['#55613f', '#b5502f'],
		['#7a2f34', '#7a2f34'],
	],
}

const at = <T>(list: readonly T[], index: number, otherwise: T): T => list[index % list.length] ?? otherwise

/** Lines of the palette that is `index`th in its season, and its name. */
function palette(quarter: Quarter, index: number) {
	const name = at(Object.keys(palettes[quarter]), index, '')
	return { name, lines: palettes[quarter][name] ?? [] }
}

const isLit = ({ lines }: ScenePot): boolean => lines.some(({ form }) => form === 'lights')

/** Two of a shape by a door; the evening where there are lights, and now and then where there are none. */
function pair(index: number, shape: Shape, kind: WallKind): Sheet {
	const quarter = at(quarters, index, 'winter')
	const { name, lines } = palette(quarter, Math.floor(index / 4) + (index % 3))
	const [wall, door] = at<Painted>(walls[kind], Math.floor(index / 2), ['#888888', '#333333'])
	const pot = potOf(shape, lines, index % 5 === 4 ? { madeOf: at(materials, index, 'metal') } : {})
	const hour = (isLit(pot) && index % 3 !== 0) || index % 13 === 12 ? 'evening' : 'day'
	const scene: Scene = {
		quarter,
		hour,
		wall: { kind, hex: hex(wall) },
		door: hex(door),
		measure: index % 11 === 5 ? 'cm' : 'none',
		pots: shape === 'window box' ? [pot] : [pot, pot],
	}
	const number = String(index + 1).padStart(2, '0')
	return { name: `${number} ${quarter} ${shape} ${kind} ${name} ${hour}`, scene, frame: { ratio: 1.6 } }
}

/** Every shape before every kind of wall, seasons, palettes and hours by turns. */
const pairs = shapes.flatMap((shape, row) =>
	wallKinds.map((kind, column) => pair(row * wallKinds.length + column, shape, kind)),
)

const scene = (
	quarter: Quarter,
	kind: WallKind,
	paint: number,
	pots: readonly ScenePot[],
	more: Partial<Scene> = {},
) => {
	const [wall, door] = at<Painted>(walls[kind], paint, ['#888888', '#333333'])
	return {
		quarter,
		hour: 'day',
		wall: { kind, hex: hex(wall) },
		door: hex(door),
		measure: 'none',
		pots,
		...more,
	} as const
}

const bare = { lengthCm: null, acrossCm: null, secondHex: null } as const

/** Places as they are: several pots, no door, cuts for a phone, a banner and a thumbnail, cards half filled in. */
function places(): Omit<Sheet, 'name'>[] {
	const copper = palette('winter', 0).lines
	const navy = palette('winter', 1).lines
	const bone = palette('winter', 2).lines
	const summer = palette('summer', 0).lines
	const round = potOf('round', copper)
	const lit = potOf('round', navy)
	const clapboard = scene('winter', 'clapboard', 0, [round, round])
	return [
		{ scene: clapboard, frame: { ratio: 2.6 } },
		{ scene: clapboard, frame: { ratio: 1.05 } },
		{ scene: clapboard, frame: { ratio: 0.72, zoom: 'pot' } },
		{ scene: clapboard, frame: { ratio: 1.27, zoom: 'pot' } },
		{ scene: scene('winter', 'clapboard', 0, [lit, lit], { hour: 'evening' }), frame: { ratio: 2.1 } },
		{
			scene: scene('winter', 'fieldstone', 0, [
				potOf('urn', bone),
				potOf('urn', bone),
				potOf('trough', bone, { stands: 'against a wall' }),
			]),
			frame: { ratio: 2.1 },
		},
		{
			scene: scene(
				'summer',
				'brick',
				1,
				[potOf('square', summer), potOf('square', summer), round, round].map((pot) => ({ ...pot, lines: summer })),
			),
			frame: { ratio: 2.1 },
		},
		{
			scene: scene(
				'autumn',
				'shop glass',
				0,
				[
					potOf('round', palette('autumn', 1).lines),
					potOf('round', palette('autumn', 1).lines),
					potOf('window box', palette('autumn', 0).lines),
				],
				{ hour: 'evening' },
			),
			frame: { ratio: 2.1 },
		},
		{
			scene: scene(
				'spring',
				'stucco',
				2,
				[
					potOf('bowl', palette('spring', 0).lines),
					potOf('column', palette('spring', 1).lines),
					potOf('rectangular', palette('spring', 0).lines),
				],
				{ door: null, measure: 'in' },
			),
			frame: { ratio: 2.1 },
		},
		{
			scene: scene('winter', 'stucco', 1, [potOf('round', [], { colour: '#f0e6d8' }), potOf('urn', [])]),
			frame: { ratio: 1.6 },
		},
		{
			scene: scene('autumn', 'clapboard', 3, [
				potOf(
					'round',
					palette('autumn', 0).lines.map((line) => ({ ...line, ...bare })),
					{ stands: 'in a corner', madeOf: 'terracotta', colour: '#b5694a' },
				),
			]),
			frame: { ratio: 1.6 },
		},
		{
			scene: scene('winter', 'brick', 0, [potOf('window box', navy), potOf('window box', navy)], {
				hour: 'evening',
				door: null,
			}),
			frame: { ratio: 1.6 },
		},
	]
}

const placed = places().map(({ scene, frame }, index): Sheet => {
	const number = String(pairs.length + index + 1)
	return {
		name: `${number} ${scene.quarter} place ${scene.wall.kind} ${scene.pots.length} ${scene.hour} ${frame.ratio}`,
		scene,
		frame,
	}
})

export const sheets: readonly Sheet[] = [...pairs, ...placed]
