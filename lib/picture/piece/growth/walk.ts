import { ahead, between, type Point } from '../ink/point'

/** A place on a stem and where the stem goes from there; `t` runs from 0 at the foot to 1 at the tip. */
export type Spot = { readonly at: Point; readonly heading: number; readonly t: number }

type Walk = {
	readonly from: Point
	readonly heading: number
	readonly lengthCm: number
	readonly legs: number
	/** Radians by which the stem turns on its next leg. */
	readonly turn: (t: number) => number
}

/** The places along a stem, `legs` + 1 of them. */
export function walk({ from, heading, lengthCm, legs, turn }: Walk): readonly Spot[] {
	const spots: Spot[] = [{ at: from, heading, t: 0 }]
	let [at, now] = [from, heading]
	for (let leg = 1; leg <= legs; leg++) {
		at = ahead(at, now, lengthCm / legs)
		now += turn(leg / legs)
		spots.push({ at, heading: now, t: leg / legs })
	}
	return spots
}

const nowhere: Spot = { at: [0, 0], heading: 0, t: 0 }

export function spotAt(spots: readonly Spot[], t: number): Spot {
	const within = Math.min(1, Math.max(0, t))
	const place = within * (spots.length - 1)
	const low = spots[Math.floor(place)] ?? nowhere
	const high = spots[Math.ceil(place)] ?? low
	const part = place - Math.floor(place)
	return { at: between(low.at, high.at, part), heading: low.heading + (high.heading - low.heading) * part, t: within }
}
