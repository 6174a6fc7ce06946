import { convertRgbToLab65 } from 'culori'
import { describe, expect, test } from 'vitest'
import { type Lab, labDifference, labOf } from '@/lib/colour/difference'
import { familyOf } from '@/lib/colour/name-of'
import { hexOf } from '@/lib/colour/rgb'
import { patches } from './checker'
import { adapted, type LabD50 } from './d50'

describe('the ColorChecker', () => {
	test.each(patches)('%s: Lab of its sRGB is its measured Lab, adapted to D65', (_, lab, [r, g, b]) => {
		expect(labDifference(convertRgbToLab65({ r, g, b }), adapted(lab))).toBeLessThan(0.02)
		// Half a step of 8 bits in each channel: most for greys, where chroma counts most.
		expect(labDifference(labOf(hexOf({ r, g, b })), adapted(lab))).toBeLessThan(0.6)
	})

	test('differences by D65 and by D50 part by 2 % in the mean and by a sixth at most: the white has to be named', () => {
		const asD50 = ([l, a, b]: LabD50): Lab => ({ mode: 'lab65', l, a, b })
		const ratios = patches.flatMap(([, one], index) =>
			patches
				.slice(index + 1)
				.map(([, other]) => labDifference(adapted(one), adapted(other)) / labDifference(asD50(one), asD50(other))),
		)
		expect(ratios).toHaveLength(276)
		const off = ratios.map((ratio) => Math.abs(ratio - 1))
		expect(off.reduce((sum, each) => sum + each, 0) / off.length).toBeCloseTo(0.02, 2)
		expect(Math.max(...off)).toBeGreaterThan(0.1)
		expect(Math.max(...off)).toBeLessThan(0.17)
	})

	test.each([
		['foliage', 'green'],
		['orange', 'orange'],
		['yellow', 'yellow'],
		['purple', 'purple'],
		['red', 'red'],
		['green', 'green'],
		['blue', 'blue'],
		['neutral 5', 'grey'],
		['white 9.5', 'white'],
		['yellow green', 'green'],
		['blue sky', 'blue'],
		['moderate red', 'red'],
	])('%s is of the family %s', (name, family) => {
		const [, , srgb] = patches.find(([called]) => called === name) ?? ['', [0, 0, 0], [0, 0, 0]]
		expect(familyOf(hexOf({ r: srgb[0], g: srgb[1], b: srgb[2] }))).toBe(family)
	})
})
