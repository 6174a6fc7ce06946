import { describe, expect, test } from 'vitest'
import { labDifference, labOf } from '@/lib/colour/difference'
import { oklchOf } from '@/lib/colour/name-of'
import { hexOf, rgbOf } from '@/lib/colour/rgb'
import { hexOfLight, oklabOf } from '@/lib/colour/site/light'
import { hex } from '@/lib/units/hex'
import { adapted } from './d50'

// W3C, CSS Color Module Level 4, examples of lab() (relative to D50) and of oklab(), each with the sRGB that it stands
// for. A step of 8 bits is up to ΔE00 0.5 for dark colours, about 0.3 for these.
describe('examples of CSS Color 4', () => {
	test.each([
		{ lab: [29.2345, 39.3825, 20.0664], is: '#7d2329' },
		{ lab: [52.2345, 40.1645, 59.9971], is: '#c65d07' },
		{ lab: [60.2345, -5.3654, 58.956], is: '#9d9318' },
		{ lab: [67.5345, -8.6911, -41.6019], is: '#62acef' },
	] as const)('lab($lab) is $is', ({ lab, is }) => {
		expect(labDifference(labOf(hex(is)), adapted(lab))).toBeLessThan(0.3)
	})

	test.each([
		{ oklab: [0.40101, 0.1147, 0.0453], is: '#7d2329' },
		{ oklab: [0.59686, 0.1009, 0.1192], is: '#c65d07' },
		{ oklab: [0.66016, -0.1084, 0.1114], is: '#68a639' },
	] as const)('oklab($oklab) is $is', ({ oklab: [l, a, b], is }) => {
		const found = oklchOf(hex(is))
		expect(Math.abs(found.l - l)).toBeLessThan(0.002)
		expect(Math.abs(found.c - Math.hypot(a, b))).toBeLessThan(0.002)
		expect(Math.abs(found.h - (Math.atan2(b, a) * 180) / Math.PI)).toBeLessThan(1)
	})
})

// B. Ottosson, "A perceptual color space for image processing", 2020, and published code of sRGB to OKLab: the corners of
// sRGB to six decimals. The matrices of 2020 and those of CSS Color 4 differ near 1e-4: four decimals are asked.
describe('corners of sRGB in OKLab', () => {
	const full = 2 ** 20
	test.each([
		{ of: '#ffffff', red: full, green: full, blue: full, l: 1, a: 0, b: 0 },
		{ of: '#ff0000', red: full, green: 0, blue: 0, l: 0.627955, a: 0.224863, b: 0.125846 },
		{ of: '#00ff00', red: 0, green: full, blue: 0, l: 0.86644, a: -0.233888, b: 0.179498 },
		{ of: '#0000ff', red: 0, green: 0, blue: full, l: 0.452014, a: -0.032457, b: -0.311528 },
		{ of: '#ffff00', red: full, green: full, blue: 0, l: 0.967983, a: -0.071369, b: 0.19857 },
	])('$of', ({ of, l, a, b, ...light }) => {
		const found = oklabOf(light)
		expect([found.l - l, found.a - a, found.b - b].map(Math.abs).every((off) => off < 5e-5)).toBe(true)
		expect(oklchOf(hex(of)).l).toBeCloseTo(l, 4)
		expect(oklchOf(hex(of)).c).toBeCloseTo(Math.hypot(a, b), 4)
		expect(hexOfLight(light)).toBe(of)
	})
})

// IEC 61966-2-1: linear light is c ÷ 12.92 up to 0.04045 and ((c + 0.055) ÷ 1.055)^2.4 above.
test('every level of 8 bits comes back from light as it was', () => {
	for (let level = 0; level < 256; level++) {
		const at = level / 255
		const light = Math.round((at <= 0.04045 ? at / 12.92 : ((at + 0.055) / 1.055) ** 2.4) * 2 ** 20)
		const grey = hex(`#${level.toString(16).padStart(2, '0').repeat(3)}`)
		expect(hexOfLight({ red: light, green: light, blue: light })).toBe(grey)
		expect(hexOf(rgbOf(grey))).toBe(grey)
	}
})
