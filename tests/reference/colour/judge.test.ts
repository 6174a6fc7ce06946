import Color from 'colorjs.io'
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { difference, labOf } from '@/lib/colour/difference'
import { oklchOf } from '@/lib/colour/name-of'
import { hex } from '@/lib/units/hex'
import { hexes } from '../../lib/colour/arbitrary'

// The judge is colorjs.io, which shares no code with the library that we compute with. Both are asked for Lab of D65: its
// own ΔE00 would take D50, and differ. The sample is the same every time.
const sample = fc.sample(hexes, { seed: 20261125, numRuns: 1000 })
const others = fc.sample(hexes, { seed: 1952, numRuns: 1000 })

const numbers = (of: Color) => of.coords.map((each) => each ?? 0)
const lab = (of: string) => numbers(new Color(of).to('lab-d65'))

/** CIEDE2000 by the judge, of two colours given as Lab of D65: handed over as its own Lab, which is not converted then. */
function judged(one: string, other: string): number {
	const asOwn = (of: string) => {
		const [l = 0, a = 0, b = 0] = lab(of)
		return new Color('lab', [l, a, b])
	}
	return asOwn(one).deltaE(asOwn(other), '2000')
}

const most = (offs: readonly number[]) => Math.max(...offs)

describe('a thousand colours, judged by another library', () => {
	test('have the same Lab of D65', () => {
		const offs = sample.flatMap((of) => {
			const [own, [l = 0, a = 0, b = 0]] = [labOf(of), lab(of)]
			return [own.l - l, own.a - a, own.b - b].map(Math.abs)
		})
		expect(most(offs)).toBeLessThan(1e-6)
	})

	test('have the same OKLCh', () => {
		const offs = sample.flatMap((of) => {
			const [l = 0, a = 0, b = 0] = numbers(new Color(of).to('oklab'))
			const own = oklchOf(of)
			const angle = (own.h * Math.PI) / 180
			return [own.l - l, own.c * Math.cos(angle) - a, own.c * Math.sin(angle) - b].map(Math.abs)
		})
		expect(most(offs)).toBeLessThan(1e-6)
	})

	test('differ from a thousand others as much', () => {
		const offs = sample.map((of, index) => {
			const other = others[index] ?? of
			return Math.abs(difference(of, other) - judged(of, other))
		})
		expect(most(offs)).toBeLessThan(1e-6)
	})

	test('differ as much from neighbours, where small differences count', () => {
		const offs = sample.map((of) => {
			const value = Number.parseInt(of.slice(1), 16) ^ 0x030207
			const near = hex(`#${value.toString(16).padStart(6, '0')}`)
			return Math.abs(difference(of, near) - judged(of, near))
		})
		expect(most(offs)).toBeLessThan(1e-6)
	})
})
