import { describe, expect, test } from 'vitest'
import { soilCm3 } from '@/lib/container/soil'
import { mixKgPerLitre, wallKgPerLitre, weigh } from '@/lib/container/weight'
import { cmPerInch } from '@/lib/format/length'
import { kgPerPound } from '@/lib/format/weight'
import { vessel } from '../../lib/container/sample'

const kgPerLitre = (poundsPerCubicFoot: number) => (poundsPerCubicFoot * kgPerPound) / 28.316846592

describe('potting mix', () => {
	// Univ. of Arkansas, Greenhouse Management Online, unit 7, section 2: peat and bark mixes 0.09 to 0.16 g/cm³ dry, and
	// 0.15 to 1.3 recommended for substrates of the greenhouse.
	test('dry: fresh is of the peat and bark mixes, all are of what is recommended', () => {
		expect(mixKgPerLitre.fresh.dry).toBeGreaterThanOrEqual(0.09)
		expect(mixKgPerLitre.fresh.dry).toBeLessThanOrEqual(0.16)
		for (const { dry } of Object.values(mixKgPerLitre)) {
			expect(dry).toBeGreaterThanOrEqual(0.15)
			expect(dry).toBeLessThanOrEqual(1.3)
		}
	})

	// Water that drained mix holds: 45 to 65 % of its volume (Yeager et al., SNA best management practices; from memory).
	test('wet is dry with what drained mix holds of water', () => {
		for (const { dry, wet } of Object.values(mixKgPerLitre)) {
			expect(wet - dry).toBeGreaterThanOrEqual(0.45)
			expect(wet - dry).toBeLessThanOrEqual(0.65 + 1e-9)
		}
	})

	// Planting media of roofs are to weigh 48 to 65 lb a cubic foot saturated, and soil can reach 120 (one web page, weak).
	test('aged mix is within the target of roofs, the heaviest above it and below soil', () => {
		expect(mixKgPerLitre.aged.wet).toBeGreaterThanOrEqual(kgPerLitre(48))
		expect(mixKgPerLitre.aged.wet).toBeLessThanOrEqual(kgPerLitre(65))
		expect(mixKgPerLitre.heaviest.wet).toBeGreaterThan(kgPerLitre(65))
		expect(mixKgPerLitre.heaviest.wet).toBeLessThan(kgPerLitre(120))
	})

	// NC State Extension, container garden for edibles: a 20-inch pot full of medium and water weighs up to 100 lb.
	test('a 20-inch pot of resin, four fifths as high as wide', () => {
		const of = vessel({
			topCm: 20 * cmPerInch,
			bottomCm: (40 / 3) * cmPerInch,
			heightCm: 16 * cmPerInch,
			wallCm: 1,
			headspaceCm: 5,
		})
		const pounds = weigh(of, { wall: 'resin', vesselKg: null, mix: 'fresh' }, 0).wetKg / kgPerPound
		expect(pounds).toBeGreaterThan(75)
		expect(pounds).toBeLessThan(100)
		expect(soilCm3(of)).toBeGreaterThan(30_000)
	})
})

// kg/m³ from tables of building materials: homecivil.com, "Densities of different materials", and qscengineer.com (softwood).
// Resin (polyethylene, 0.91 to 0.97) from memory. What a pot is made of varies more than these: an estimate, said to be one.
describe('walls', () => {
	test.each([
		{ wall: 'metal', published: 7850, of: 'steel' },
		{ wall: 'wood', published: 500, of: 'softwood timber' },
		{ wall: 'terracotta', published: 1900, of: 'bricks' },
		{ wall: 'cast stone', published: 2300, of: 'concrete' },
	] as const)('$wall as $of', ({ wall, published }) => {
		expect(wallKgPerLitre[wall] * 1000).toBe(published)
	})

	test('resin floats, just', () => {
		expect(wallKgPerLitre.resin).toBeGreaterThanOrEqual(0.91)
		expect(wallKgPerLitre.resin).toBeLessThanOrEqual(0.97)
	})

	// eatsip365.com: a 24-inch planter of plastic might weigh 10 lb, one of concrete could easily top 150 lb (weak source).
	test('a 24-inch pot, of cast stone and of resin', () => {
		const of = vessel({ topCm: 61, bottomCm: 46, heightCm: 50 })
		const pounds = (wall: 'cast stone' | 'resin', wallCm: number) =>
			weigh({ ...of, wallCm }, { wall, vesselKg: null, mix: 'fresh' }, 0).vesselKg / kgPerPound
		expect(pounds('cast stone', 4)).toBeGreaterThan(150)
		expect(pounds('resin', 0.5)).toBeGreaterThan(8)
		expect(pounds('resin', 0.5)).toBeLessThan(15)
	})
})
