import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { isRound, type Vessel } from '@/lib/container/card'
import { openingCm2, soilLitres } from '@/lib/container/soil'
import { vessels } from './sample'

const { PI } = Math

/** Height of what is hollow: of an urn its bowl, three fifths of it. */
const body = ({ shape, heightCm }: Vessel) => (shape === 'urn' ? 0.6 * heightCm : heightCm)

/** Inner area at a height above the inner floor, by the vessel's own section there: a second witness. */
function sectionCm2(of: Vessel, z: number): number {
	const { shape, topCm, topDepthCm, bottomCm, bottomDepthCm, wallCm } = of
	const h = body(of) - wallCm
	if (shape === 'bowl') {
		const rim = topCm / 2 - wallCm
		const radius = (rim ** 2 + h ** 2) / (2 * h)
		return PI * z * (2 * radius - z)
	}
	const between = (floor: number, rim: number) => floor - 2 * wallCm + ((rim - floor) * z) / h
	const across = between(bottomCm, topCm)
	if (isRound(shape)) return PI * (across / 2) ** 2
	return across * between(bottomDepthCm ?? bottomCm, topDepthCm ?? topCm)
}

const slices = 400

/** Slice upon slice from the (false) bottom to where the soil ends. */
function slicedLitres(of: Vessel): number {
	const to = body(of) - of.wallCm - of.headspaceCm
	const from = Math.max(0, to - (of.soilDepthCm ?? to))
	const thick = (to - from) / slices
	let cm3 = 0
	for (let n = 0; n < slices; n += 1) cm3 += sectionCm2(of, from + (n + 0.5) * thick) * thick
	return cm3 / 1000
}

const holds = (of: Vessel) => {
	const { topCm, bottomCm, topDepthCm, bottomDepthCm, wallCm, headspaceCm } = of
	const narrowest = Math.min(topCm, bottomCm, topDepthCm ?? topCm, bottomDepthCm ?? bottomCm)
	return wallCm * 2 < narrowest && wallCm + headspaceCm < body(of)
}

const usable = vessels.filter(holds)

describe('laws of soil', () => {
	test('it is what slices of the vessel sum to', () => {
		fc.assert(
			fc.property(usable, (of) => {
				const sliced = slicedLitres(of)
				// half a decilitre of rounding, and what 400 slices miss of a curve
				expect(Math.abs(soilLitres(of) - sliced)).toBeLessThan(0.0501 + sliced * 1e-5)
			}),
			{ numRuns: 1000 },
		)
	})

	test('the opening is the section at the rim', () => {
		fc.assert(
			fc.property(usable, (of) => {
				expect(Math.abs(openingCm2(of) - sectionCm2(of, body(of) - of.wallCm))).toBeLessThanOrEqual(0.5 + 1e-6)
			}),
			{ numRuns: 500 },
		)
	})

	test('thicker walls, more headspace or a false bottom never hold more', () => {
		fc.assert(
			fc.property(usable, fc.integer({ min: 1, max: 20 }), (of, tenths) => {
				const by = tenths / 10
				const whole = { ...of, soilDepthCm: null }
				const tighter = [
					...(of.shape === 'bowl' ? [] : [{ ...whole, wallCm: of.wallCm + by }]),
					{ ...whole, headspaceCm: of.headspaceCm + by },
					{ ...whole, soilDepthCm: of.heightCm - by },
				]
				for (const less of tighter.filter(holds)) expect(soilLitres(less)).toBeLessThanOrEqual(soilLitres(whole))
			}),
			{ numRuns: 500 },
		)
	})

	test('the less soil above a false bottom, the less of it', () => {
		fc.assert(
			fc.property(usable, fc.integer({ min: 1, max: 60 }), fc.integer({ min: 1, max: 60 }), (of, a, b) => {
				const held = (soilDepthCm: number) => soilLitres({ ...of, soilDepthCm })
				expect(held(Math.min(a, b))).toBeLessThanOrEqual(held(Math.max(a, b)))
			}),
			{ numRuns: 300 },
		)
	})

	test('it is the same whichever side of a box is called its front', () => {
		fc.assert(
			fc.property(usable, (of) => {
				fc.pre(of.topDepthCm !== null && of.bottomDepthCm !== null)
				const { topCm, topDepthCm, bottomCm, bottomDepthCm } = of
				const turned = {
					...of,
					topCm: topDepthCm ?? topCm,
					topDepthCm: topCm,
					bottomCm: bottomDepthCm ?? bottomCm,
					bottomDepthCm: bottomCm,
				}
				expect(Math.abs(soilLitres(turned) - soilLitres(of))).toBeLessThan(0.11)
				expect(openingCm2(turned)).toBe(openingCm2(of))
			}),
			{ numRuns: 300 },
		)
	})
})
