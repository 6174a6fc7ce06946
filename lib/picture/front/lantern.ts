import { hex } from '../../units/hex'
import { radial } from '../pen/gradient'
import { n } from '../pen/n'
import { ellipse, fill, line, rect } from '../pen/path'
import type { Pen } from '../pen/pen'
import { doorCm } from './door'

const iron = hex('#23262a')
const flame = hex('#ffd287')

/** A lantern on the wall at the latch side of the door, lit. */
export function lantern({ defs }: Pen): string {
	const [x, y] = [doorCm.width / 2 + doorCm.trim + 16, -doorCm.step - 172]
	const halo = radial(defs, [
		[0, flame, 0.75],
		[0.25, flame, 0.3],
		[1, flame, 0],
	])
	const glass = radial(defs, [
		[0, hex('#fff3d6'), 1],
		[0.5, flame, 1],
		[1, hex('#d98f3c'), 1],
	])
	return (
		`<g transform="translate(${n(x)} ${n(y)})">` +
		ellipse(0, 4, 62, 74, halo) +
		line('M-7-14Q-7-22 0-21', iron, 1.4) +
		fill('M-5.4-12H5.4L7 12H-7z', iron) +
		fill('M-4-10H4L5.3 10.4H-5.3z', glass) +
		line('M0-10V10M-4.6 0H4.6', iron, 0.7) +
		fill('M-6.6-11.6L0-19 6.6-11.6z', iron) +
		rect(-5, 11.4, 10, 2.4, iron) +
		'</g>'
	)
}
