import { between, wobble } from '../pen/dice-of'
import { clamp } from '../pen/n'
import { tilt } from '../pen/pen'
import type { Dice } from '../piece'
import { type Bed, onPaper } from './bed'

/** The turn after which a spiral never repeats itself (H. Vogel, Mathematical Biosciences 44, 1979), in radians. */
const goldenAngle = Math.PI * (3 - Math.sqrt(5))

/** A place in the dome: where it stands in the bed (−1 to 1 across, and towards the viewer), and where it leans to. */
export type Place = {
	readonly u: number
	readonly v: number
	/** Which way it leans on the ground, at most 1 long: upright in the middle, flat at the rim. */
	readonly to: readonly [across: number, near: number]
}

/** Where it leans in a bed before a wall: hardly backwards, for there is no room. */
const forward = (near: number, { stands }: Bed): number => {
	if (near >= 0) return near
	return near * (stands === 'all round' ? 0.8 : 0.3)
}

function inRound(index: number, count: number, phase: number, bed: Bed, dice: Dice): Place {
	const r = clamp(Math.sqrt((index + 0.5) / count) + wobble(dice, 0.14), 0, 1)
	const turn = index * goldenAngle + phase + wobble(dice, 0.4)
	const [u, v] = [Math.cos(turn) * r, Math.sin(turn) * r]
	return { u, v, to: [u, forward(v, bed)] }
}

/** Along a long bed nearly everything leans forward; only at its ends sideways. */
function inLong(index: number, count: number, phase: number, bed: Bed, dice: Dice): Place {
	const along = (index * 0.618034 + phase) % 1
	const u = clamp((along * 2 - 1) * 1.04 + wobble(dice, 1.2 / count), -1, 1)
	const v = clamp((((index * 0.7549 + phase * 3) % 1) * 2 - 1) * 1.02, -1, 1)
	const ends = Math.max(0, (Math.abs(u) - 0.62) / 0.38) ** 1.3 * Math.sign(u)
	return { u, v, to: [clamp(ends * 0.95 + wobble(dice, 0.32), -1, 1), forward(v * 0.85 + 0.1, bed)] }
}

/** `count` places over a bed, evenly and yet not in rows. */
export function placesIn(bed: Bed, count: number, dice: Dice): Place[] {
	const phase = between(dice, 0, bed.isLong ? 1 : Math.PI * 2)
	return Array.from({ length: count }, (_, index) => (bed.isLong ? inLong : inRound)(index, count, phase, bed, dice))
}

/** A way in space: across, up, towards the viewer. */
export type Way = readonly [across: number, up: number, near: number]

/** The way in which a stem at a place grows; `most` is how far it leans at the rim, in degrees. */
export function wayOf({ to: [across, near] }: Place, most: number): Way {
	const out = Math.min(1, Math.hypot(across, near))
	const lean = (out ** 1.5 * most * Math.PI) / 180
	const share = out === 0 ? 0 : Math.sin(lean) / out
	return [across * share, Math.cos(lean), near * share]
}

/** How a way looks on paper: turned by degrees clockwise from upright, and how much of its length is seen. */
export function seenAs([across, up, near]: Way): { readonly turn: number; readonly share: number } {
	const [x, y] = [across, up - near * tilt]
	return { turn: (Math.atan2(x, y) * 180) / Math.PI, share: Math.min(1, Math.hypot(x, y)) }
}

/** The end of a stem `long` cm that grows from a place. */
export function endOf(bed: Bed, place: Place, [across, up, near]: Way, long: number): readonly [x: number, y: number] {
	const inner = 0.72
	return onPaper(
		bed,
		place.u * bed.halfWidth * inner + across * long,
		up * long,
		place.v * bed.halfDepth * inner + near * long,
	)
}
