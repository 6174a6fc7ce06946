import { outline } from '../../container/outline'
import type { Pot } from './above-rim'

/** How far below the rim a foot can stand at `x` cm from the middle and not show beside the vessel: an urn's bowl ends early. */
export function roomCm(pot: Pot, x: number): number {
	const inside = Math.abs(x)
	const [rim, ...below] = outline(pot).toReversed()
	if (rim === undefined || rim.halfCm <= inside) return 0
	let last = rim
	for (const next of below) {
		if (next.halfCm < inside) {
			const part = (last.halfCm - inside) / (last.halfCm - next.halfCm)
			return rim.heightCm - (last.heightCm + (next.heightCm - last.heightCm) * part)
		}
		last = next
	}
	return rim.heightCm
}
