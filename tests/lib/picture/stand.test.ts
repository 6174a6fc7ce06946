import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { lightOf } from '@/lib/picture/light/light'
import { stand } from '@/lib/picture/place/stand'
import type { Stood } from '@/lib/picture/place/stood'
import type { Scene } from '@/lib/picture/scene'
import { hex } from '@/lib/units/hex'
import { palettes } from '../../picture/lines'
import { potOf } from '../../picture/vessels'
import { anyScene } from './any-scene'

const lines = palettes.winter['brass and navy'] ?? []
const [round, urn, square, box] = [
	potOf('round', lines),
	potOf('urn', lines),
	potOf('square', lines),
	potOf('window box', lines),
]

const placed = (pots: Scene['pots'], door: Scene['door']): Stood[] => {
	const wall = { kind: 'brick', hex: hex('#8b5344') } as const
	const scene: Scene = { quarter: 'winter', hour: 'day', wall, door, measure: 'none', pots }
	return stand(scene, lightOf(scene))
}
const red = hex('#7d3a2c')
const shapesOf = (stood: readonly Stood[]) => stood.map(({ body, x }) => `${x < 0 ? 'left' : 'right'} ${body.shape}`)

describe('where pots stand', () => {
	test.each<{ name: string; pots: Scene['pots']; door: Scene['door']; are: string[] }>([
		{ name: 'one, left of the door', pots: [urn], door: red, are: ['left urn'] },
		{ name: 'two, either side of it', pots: [round, urn], door: red, are: ['left round', 'right urn'] },
		{
			name: 'four, the first two nearest the door',
			pots: [round, urn, square, square],
			door: red,
			are: ['left square', 'left round', 'right urn', 'right square'],
		},
		{
			name: 'boxes under their windows, beyond what stands',
			pots: [box, round, urn],
			door: red,
			are: ['left window box', 'left round', 'right urn'],
		},
		{
			name: 'in their order where there is no door',
			pots: [urn, square],
			door: null,
			are: ['left urn', 'right square'],
		},
		{ name: 'none, where nothing stands', pots: [], door: red, are: [] },
	])('$name', ({ pots, door, are }) => {
		expect(shapesOf(placed(pots, door))).toEqual(are)
	})

	test('a box hangs, a pot stands on the ground', () => {
		const stood = placed([box, round], red)
		expect(stood.map(({ body, y }) => [body.shape, y < 0])).toEqual([
			['round', false],
			['window box', true],
		])
	})
})

/** Half a doorway of a three-foot door (91.4 cm) with 11 cm of trim. */
const doorwayHalfCm = 91.4 / 2 + 11

describe('laws of standing', () => {
	test('no pot stands over another, nor before the door', () => {
		fc.assert(
			fc.property(anyScene, (scene) => {
				const stood = stand(scene, lightOf(scene)).toSorted((a, b) => a.x - b.x)
				const halves = stood.map(({ body }) => Math.max(body.top, body.bottom))
				stood.forEach(({ x }, index) => {
					const half = halves[index] ?? 0
					const [next, nextHalf] = [stood[index + 1], halves[index + 1] ?? 0]
					if (next !== undefined) expect(next.x - x).toBeGreaterThan(half + nextHalf)
					if (scene.door !== null) expect(Math.abs(x) - half).toBeGreaterThan(doorwayHalfCm)
				})
				expect(stood).toHaveLength(scene.pots.length)
			}),
			{ numRuns: 200 },
		)
	})
})
