import { describe, expect, test } from 'vitest'
import { type Deficiency, deficiencies } from '@/lib/colour/eyes/deficiency'
import { seenAs } from '@/lib/colour/eyes/seen-as'
import { hex } from '@/lib/units/hex'
import { bytes, encoded, linear } from '../../lib/colour/site/paint'

// G. M. Machado, M. M. Oliveira, L. A. F. Fernandes, "A Physiologically-based Model for Simulation of Color Vision
// Deficiency", IEEE Transactions on Visualization and Computer Graphics 15(6), 2009: matrices of severity 1.0.
const matrices: Readonly<Record<Deficiency, readonly (readonly [number, number, number])[]>> = {
	protan: [
		[0.152286, 1.052583, -0.204868],
		[0.114503, 0.786281, 0.099216],
		[-0.003882, -0.048116, 1.051998],
	],
	deutan: [
		[0.367322, 0.860646, -0.227968],
		[0.280085, 0.672501, 0.047413],
		[-0.01182, 0.04294, 0.968881],
	],
	tritan: [
		[1.255528, -0.076749, -0.178779],
		[-0.078411, 0.930809, 0.147602],
		[0.004733, 0.691367, 0.3039],
	],
}

const colours = ['#8f2c2f', '#3d6147', '#bb9346', '#24365a', '#b4643a', '#dbe6ea', '#6b5796', '#566b3d']

describe('the published matrices on linear light', () => {
	test.each(deficiencies.flatMap((deficiency) => colours.map((of) => ({ deficiency, of }))))(
		'$of seen as $deficiency',
		({ deficiency, of }) => {
			const light = bytes(of).map((level) => linear(level / 255))
			const expected = matrices[deficiency].map((row) => {
				const sum = row.reduce<number>((total, factor, at) => total + factor * (light[at] ?? 0), 0)
				return Math.round(255 * encoded(Math.min(1, Math.max(0, sum))))
			})
			expect(bytes(seenAs(hex(of), deficiency))).toEqual(expected)
		},
	)
})

// What a browser's emulation of dichromacy makes of the corners of sRGB, as the tests of the colour library Unicolour
// (another language, no code shared) have it: within 1 level, for tritan 2.
describe('corners of sRGB as browsers show them', () => {
	const corners = {
		red: '#ff0000',
		yellow: '#ffff00',
		green: '#00ff00',
		cyan: '#00ffff',
		blue: '#0000ff',
		magenta: '#ff00ff',
	}
	const shown: Readonly<Record<Deficiency, Readonly<Record<keyof typeof corners, readonly number[]>>>> = {
		protan: {
			red: [109, 95, 0],
			yellow: [255, 244, 0],
			green: [255, 229, 0],
			cyan: [237, 242, 255],
			blue: [0, 88, 255],
			magenta: [0, 128, 255],
		},
		deutan: {
			red: [163, 144, 0],
			yellow: [255, 250, 50],
			green: [239, 214, 59],
			cyan: [208, 221, 255],
			blue: [0, 61, 251],
			magenta: [104, 155, 250],
		},
		tritan: {
			red: [255, 0, 13],
			yellow: [255, 238, 217],
			green: [0, 247, 216],
			cyan: [0, 255, 255],
			blue: [0, 108, 150],
			magenta: [255, 75, 151],
		},
	}
	test.each(deficiencies)('%s', (deficiency) => {
		const allowed = deficiency === 'tritan' ? 2 : 1
		const offs = Object.entries(corners).flatMap(([name, of]) => {
			const seen = bytes(seenAs(hex(of), deficiency))
			const as = Object.entries(shown[deficiency]).find(([corner]) => corner === name)?.[1] ?? []
			return seen.map((level, at) => Math.abs(level - (as[at] ?? Number.NaN)))
		})
		expect(offs).toHaveLength(18)
		expect(Math.max(...offs)).toBeLessThanOrEqual(allowed)
	})
})
