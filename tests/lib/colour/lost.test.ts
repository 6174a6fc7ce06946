import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { difference } from '@/lib/colour/difference'
import type { Behind } from '@/lib/colour/losses'
import { lost } from '@/lib/colour/lost'
import type { Role } from '@/lib/recipe/material'
import type { Planned } from '@/lib/recipe/planned'
import type { DesignMaterial } from '@/lib/recipe/traits'
import { hex } from '@/lib/units/hex'
import { hexes } from './arbitrary'
import { material, winter } from './material'

const line = (of: DesignMaterial, more: Partial<Planned> = {}): Planned => ({
	material: of,
	role: of.role,
	count: 5,
	...more,
})
const behind = (wall: string, door: string | null = null, kind: Behind['wall']['kind'] = 'stucco'): Behind => ({
	wall: { kind, hex: hex(wall) },
	door: door === null ? null : hex(door),
})

const mossBow = material(30, 'moss bows', '#4a6a44')
const greenFern = material(31, 'fern', '#4d6f42', { kind: 'live', piece: 'plant', role: 'filler', form: 'fern' })

describe('what is lost to the eye', () => {
	test.each([
		{
			name: 'white birch before bone stucco',
			lines: [line(winter.birch), line(winter.fir)],
			before: behind('#d8cfbf'),
			keys: [`lost/${winter.birch.id}/wall/look again`],
		},
		{
			name: 'red dogwood before a dark red door, not before pale stucco',
			lines: [line(winter.dogwood)],
			before: behind('#d8cfbf', '#7d3a2c'),
			keys: [`lost/${winter.dogwood.id}/door/look again`],
		},
		{
			name: 'curly willow before brown shop glass and a brown door',
			lines: [line(winter.willow)],
			before: behind('#7a6848', '#8a6a40', 'shop glass'),
			keys: [`lost/${winter.willow.id}/wall/look again`, `lost/${winter.willow.id}/door/look again`],
		},
		{
			name: 'moss bows among fir and boxwood',
			lines: [line(mossBow), line(winter.fir), line(winter.boxwood), line(winter.garland)],
			before: behind('#ffffff'),
			keys: [`lost/${mossBow.id}/greens/look again`],
		},
		{
			name: 'moss bows in a planting of ferns',
			lines: [line(mossBow), line(greenFern)],
			before: behind('#ffffff'),
			keys: [`lost/${mossBow.id}/greens/look again`],
		},
		{
			name: 'copper among greens before brick of another colour',
			lines: [line(winter.copper), line(winter.fir), line(winter.birch)],
			before: behind('#8b6353', '#20344f', 'brick'),
			keys: [],
		},
		{
			name: 'greens before a green wall, lights, stakes and what comes to nothing',
			lines: [
				line(winter.fir),
				line({ ...winter.lights, hex: hex('#4b6b3e') }),
				line({ ...winter.stakes, hex: hex('#3d6147') }),
				line({ ...winter.birch, hex: hex('#3d6147') }, { count: 0 }),
			],
			before: behind('#3d6147'),
			keys: [],
		},
		{
			name: 'birch used as an accent, among greens that it differs from',
			lines: [line(winter.birch, { role: 'accent' }), line(winter.fir)],
			before: behind('#d8d0c1'),
			keys: [],
		},
		{ name: 'nothing in an empty pot', lines: [], before: behind('#d8d0c1', '#000000'), keys: [] },
	])('$name', ({ lines, before, keys }) => {
		expect(lost(lines, before).map(({ key }) => key)).toEqual(keys)
	})

	test('is told in plain sentences with what would mend it', () => {
		const [wall] = lost([line(winter.birch)], behind('#d8cfbf'))
		expect(wall).toEqual({
			key: `lost/${winter.birch.id}/wall/look again`,
			says: 'White birch would be lost against the stucco: their colours are too near each other.',
			mend: 'Take a darker one or another colour.',
			weight: 'look again',
		})
		const [door] = lost([line(winter.dogwood)], behind('#ffffff', '#7d3a2c'))
		expect(door?.says).toBe('Red dogwood would be lost against the door: their colours are too near each other.')
		expect(door?.mend).toBe('Take a lighter one or another colour, or stand the container clear of the door.')
		const [greens] = lost([line(mossBow), line(winter.fir), line(winter.boxwood)], behind('#ffffff'))
		expect(greens?.says).toBe(
			'Moss bows would be lost in the noble fir and the boxwood: their colours are too near each other.',
		)
	})

	test('is found once, however many lines have it', () => {
		expect(lost([line(winter.birch), line(winter.birch)], behind('#d8cfbf'))).toHaveLength(1)
	})

	test('a thriller is lost exactly where its ΔE00 from the wall is under 15', () => {
		fc.assert(
			fc.property(hexes, hexes, (stem, wall) => {
				const found = lost([line(material(1, 'stem', stem, { role: 'thriller' }))], behind(wall))
				expect(found.length).toBe(difference(stem, wall) < 15 ? 1 : 0)
			}),
			{ numRuns: 1000 },
		)
	})

	test('what weighs and what is asked never differ by the order of the lines', () => {
		const roles: readonly Role[] = ['thriller', 'filler', 'spiller', 'accent']
		const some = fc.array(fc.tuple(hexes, fc.constantFrom(...roles)), { maxLength: 8 })
		fc.assert(
			fc.property(some, hexes, (all, wall) => {
				const lines = all.map(([colour, role], n) => line(material(n, `m${n}`, colour, { role })))
				const keys = (of: readonly Planned[]) => lost(of, behind(wall, wall)).map(({ key }) => key)
				expect(keys(lines.toReversed()).toSorted()).toEqual(keys(lines).toSorted())
			}),
		)
	})
})
