import type { Hex } from '../../units/hex'
import { linear } from '../pen/gradient'
import { n } from '../pen/n'
import { fill, line, rect } from '../pen/path'
import { type Pen, tilt } from '../pen/pen'
import { shade } from '../pen/shade'
import { contact } from '../wall/contact'
import { doorCm } from './door'
import { stoneOf } from './trim'

/** How far the step comes out before the wall, in cm. */
const treadCm = 36
export const stepHalfCm = doorCm.width / 2 + doorCm.trim + 9

/** One step of stone before the door. */
export function step(x: number, wall: Hex, pen: Pen): string {
	const colour = pen.light.tone(stoneOf(wall))
	const [half, rise, out] = [stepHalfCm, doorCm.step, treadCm * tilt]
	const front = linear(pen.defs, 'down', [
		[0, shade(colour, -0.1)],
		[0.8, shade(colour, -0.16)],
		[1, shade(colour, -0.24)],
	])
	const tread = linear(pen.defs, 'down', [
		[0, shade(colour, -0.1)],
		[0.5, shade(colour, 0.02)],
		[1, shade(colour, 0.05)],
	])
	return (
		`<g transform="translate(${n(x)} 0)">` +
		contact(0, out, half, pen) +
		rect(-half, -rise + out, half * 2, rise, front) +
		fill(`M${n(-half)} ${n(-rise + out)}V${n(-rise)}H${n(half)}V${n(-rise + out)}z`, tread) +
		rect(-half - 0.8, -rise + out - 0.4, half * 2 + 1.6, 2.6, shade(colour, 0.03)) +
		line(`M${n(-half - 0.8)} ${n(-rise + out + 2.4)}h${n(half * 2 + 1.6)}`, shade(colour, -0.26), 0.7, 0.7) +
		'</g>'
	)
}
