import fc from 'fast-check'
import { isRound, shapes, stands, type Vessel } from '@/lib/container/card'
import { type Pot, reference } from '@/lib/recipe/grow/reference'
import { problemOf } from '../../container/problem-of'

const cmPerInch = 2.54

/** Outer measures in inches: across (or along the front), front to back, height. */
type Inches = readonly [across: number, deep: number | null, high: number]

/** A pot such as stands at a door, measured in inches; as wide at its floor as at its rim unless told. */
export function pot([across, deep, high]: Inches, more: Partial<Pot> = {}): Pot {
	const [topCm, heightCm] = [across * cmPerInch, high * cmPerInch]
	const topDepthCm = deep === null ? null : deep * cmPerInch
	return {
		...reference,
		shape: deep === null ? 'round' : 'rectangular',
		...{ topCm, topDepthCm, bottomCm: topCm, bottomDepthCm: topDepthCm, heightCm },
		...more,
	}
}

const tenth = (min: number, max: number) => fc.integer({ min: min * 10, max: max * 10 }).map((n) => n / 10)

/** Pots whose measures make sense, of every shape, standing anywhere. */
export const pots: fc.Arbitrary<Pot> = fc
	.record({
		shape: fc.constantFrom(...shapes),
		stands: fc.constantFrom(...stands),
		topCm: tenth(20, 160),
		topDepthCm: tenth(18, 80),
		bottomCm: tenth(15, 160),
		bottomDepthCm: tenth(15, 80),
		heightCm: tenth(20, 110),
		wallCm: tenth(0, 4),
		headspaceCm: tenth(0, 6),
		soilDepthCm: fc.constant(null),
	})
	.map((drawn) => ({ ...drawn, ...(isRound(drawn.shape) && { topDepthCm: null, bottomDepthCm: null }) }))
	.filter((of) => problemOf(of).length === 0)

/** The same pot with every measure of it larger. */
export function larger<Of extends Vessel>(of: Of, by: number): Of {
	const times = (cm: number | null) => (cm === null ? null : cm * by)
	return {
		...of,
		topCm: of.topCm * by,
		topDepthCm: times(of.topDepthCm),
		bottomCm: of.bottomCm * by,
		bottomDepthCm: times(of.bottomDepthCm),
		heightCm: of.heightCm * by,
		wallCm: of.wallCm * by,
		headspaceCm: of.headspaceCm * by,
	}
}
