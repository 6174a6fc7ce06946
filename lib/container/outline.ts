import type { Vessel } from './card'
import { urnBowlShare } from './inner'

/** Half of the vessel's width at a height above the ground, seen from its front; cm. */
export type Level = { readonly heightCm: number; readonly halfCm: number }

const steps = 24
const parts = Array.from({ length: steps + 1 }, (_, n) => n / steps)

/** A cap of a sphere on a foot ring as wide as its bottom measure. */
function bowlOutline({ topCm, bottomCm, heightCm }: Vessel): Level[] {
	const rim = topCm / 2
	const radius = (rim * rim + heightCm * heightCm) / (2 * heightCm)
	const whole = Math.acos((radius - heightCm) / radius)
	const foot = Math.min(bottomCm / 2, rim)
	return parts.map((part) => {
		const angle = whole * part
		return { heightCm: radius * (1 - Math.cos(angle)), halfCm: Math.max(foot, radius * Math.sin(angle)) }
	})
}

/** Heights of an urn's plinth and of the two ends of its stem as parts of the whole, and the stem's width as one of its foot. */
const urn = { plinth: 0.06, stemFrom: 0.2, stemTo: 0.24, stem: 0.45 } as const
/** How far the bowl swells below and draws in under its lip, as a part of what it widens. */
const swell = 0.08

/** From `a` to `b` without a corner at either end. */
const eased = (a: number, b: number, part: number) => a + ((b - a) * (1 - Math.cos(Math.PI * part))) / 2

/** Plinth, stem, and a bowl that swells, draws in and opens to its lip. */
function urnOutline({ topCm, bottomCm, heightCm }: Vessel): Level[] {
	const [foot, rim] = [bottomCm / 2, topCm / 2]
	const stem = foot * urn.stem
	const level = (part: number, halfCm: number): Level => ({ heightCm: heightCm * part, halfCm })
	const curve = (from: number, to: number, half: (part: number) => number) =>
		parts.map((part) => level(from + (to - from) * part, half(part)))
	const floor = 1 - urnBowlShare
	return [
		level(0, foot),
		...curve(urn.plinth, urn.stemFrom, (part) => eased(foot, stem, part)),
		...curve(urn.stemTo, floor, (part) => eased(stem, foot, part)),
		...curve(floor, 1, (part) => foot + (rim - foot) * (part + swell * Math.sin(2 * Math.PI * part))).slice(1),
	]
}

/** The silhouette from the ground to the rim, as half-widths over height; heights rise. */
export function outline(vessel: Vessel): Level[] {
	if (vessel.shape === 'bowl') return bowlOutline(vessel)
	if (vessel.shape === 'urn') return urnOutline(vessel)
	return [
		{ heightCm: 0, halfCm: vessel.bottomCm / 2 },
		{ heightCm: vessel.heightCm, halfCm: vessel.topCm / 2 },
	]
}
