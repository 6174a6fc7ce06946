import type { Layer } from './layer'
import type { Leg, Line, Round } from './shape'

/** How far layers reach from the origin, ink and all. */
export type Extent = { readonly upCm: number; readonly downCm: number; readonly sideCm: number }

type Reach = (x: number, y: number) => void

const samples = [0.2, 0.4, 0.6, 0.8] as const

/** A point of a curve, one coordinate at a time (Bernstein’s form). */
function at(t: number, from: number, leg: Leg, axis: 0 | 1): number {
	const u = 1 - t
	const [one, two, three] = leg
	if (two === undefined) return u * from + t * one[axis]
	if (three === undefined) return u * u * from + 2 * u * t * one[axis] + t * t * two[axis]
	return u * u * u * from + 3 * u * u * t * one[axis] + 3 * u * t * t * two[axis] + t * t * t * three[axis]
}

function alongLine({ from, legs }: Line, reach: Reach): void {
	let [x, y] = from
	reach(x, y)
	for (const leg of legs) {
		if (leg.length > 1) for (const t of samples) reach(at(t, x, leg, 0), at(t, y, leg, 1))
		const end = leg.at(-1) ?? from
		x = end[0]
		y = end[1]
		reach(x, y)
	}
}

function roundAbout({ centre: [x, y], acrossCm, alongCm, tilt }: Round, reach: Reach): void {
	const aside = Math.hypot(acrossCm * Math.cos(tilt), alongCm * Math.sin(tilt)) / 2
	const up = Math.hypot(acrossCm * Math.sin(tilt), alongCm * Math.cos(tilt)) / 2
	reach(x - aside, y - up)
	reach(x + aside, y + up)
}

export function extent(layers: readonly Layer[]): Extent {
	const far = { upCm: 0, downCm: 0, sideCm: 0 }
	for (const { shapes, penCm } of layers) {
		const half = (penCm ?? 0) / 2
		const reach: Reach = (x, y) => {
			far.upCm = Math.max(far.upCm, half - y)
			far.downCm = Math.max(far.downCm, half + y)
			far.sideCm = Math.max(far.sideCm, half + Math.abs(x))
		}
		for (const shape of shapes) {
			if ('centre' in shape) roundAbout(shape, reach)
			else alongLine(shape, reach)
		}
	}
	return far
}
