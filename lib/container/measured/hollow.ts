import type { Vessel } from '../card'
import { inner } from '../inner'
import { type Level, outline } from '../outline'
import { soilDepthCm } from '../soil'

/** The hollow as it would show from the front if the vessel were cut open: half-widths over height from the ground. */
export function hollow(vessel: Vessel): Level[] {
	const { topCm, bottomCm, heightCm } = inner(vessel)
	const floor = vessel.heightCm - heightCm
	if (vessel.shape === 'bowl') {
		const cap = outline({ ...vessel, topCm, bottomCm: 0, heightCm })
		return cap.map((level) => ({ ...level, heightCm: level.heightCm + floor }))
	}
	if (vessel.shape === 'urn') {
		return cut(outline(vessel), floor, vessel.heightCm).map(({ heightCm: at, halfCm }) => ({
			heightCm: at,
			halfCm: Math.max(0, halfCm - vessel.wallCm),
		}))
	}
	return [
		{ heightCm: floor, halfCm: bottomCm / 2 },
		{ heightCm: vessel.heightCm, halfCm: topCm / 2 },
	]
}

/** Half of the width at a height, between the levels around it. */
function halfAt(levels: readonly Level[], atCm: number): number {
	const above = levels.findIndex(({ heightCm }) => heightCm >= atCm)
	const to = levels[above] ?? levels.at(-1)
	const from = levels[above - 1] ?? to
	if (from === undefined || to === undefined) return 0
	const span = to.heightCm - from.heightCm
	return span === 0 ? to.halfCm : from.halfCm + ((to.halfCm - from.halfCm) * (atCm - from.heightCm)) / span
}

/** What of a silhouette lies between two heights. */
export function cut(levels: readonly Level[], from: number, to: number): Level[] {
	const within = levels.filter(({ heightCm }) => heightCm > from && heightCm < to)
	const end = (heightCm: number): Level => ({ heightCm, halfCm: halfAt(levels, heightCm) })
	return [end(from), ...within, end(to)]
}

/** The soil in it, seen likewise. */
export function soilWithin(vessel: Vessel): Level[] {
	const top = vessel.heightCm - vessel.headspaceCm
	return cut(hollow(vessel), top - soilDepthCm(vessel), top)
}
