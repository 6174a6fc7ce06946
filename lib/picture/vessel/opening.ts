import type { Hex } from '../../units/hex'
import { hex } from '../../units/hex'
import { linear } from '../pen/gradient'
import { n } from '../pen/n'
import { ellipse, fill } from '../pen/path'
import type { Pen } from '../pen/pen'
import { type Body, onPaper } from './body'
import type { Finish } from './finish'

const earth: Hex = hex('#3a2d24')

/** Far wall above, soil below. */
const depth = (finish: Finish, { defs, light }: Pen): string =>
	linear(defs, 'down', [
		[0, finish.plain(-0.14)],
		[0.5, finish.plain(-0.2)],
		[0.62, light.tone(earth)],
	])

const ring = (rx: number, ry: number, y: number): string =>
	`M${n(-rx)} ${n(y)}A${n(rx)} ${n(ry)} 0 0 0 ${n(rx)} ${n(y)}A${n(rx)} ${n(ry)} 0 0 0 ${n(-rx)} ${n(y)}Z`

/** Rim and mouth of a round vessel, seen from a little above. */
export function roundOpening({ top, height, lip }: Body, finish: Finish, pen: Pen): string {
	const [ry, inner, innerRy] = [onPaper(top), top - lip, onPaper(top - lip)]
	return fill(ring(top, ry, -height), finish.side(0.06)) + ellipse(0, -height, inner, innerRy, depth(finish, pen))
}

/** The near half of the rim, which lies over what grows behind it. */
export function nearRim({ top, height, lip }: Body, finish: Finish): string {
	const [ry, inner, innerRy, y] = [onPaper(top), top - lip, onPaper(top - lip), n(-height)]
	const d = `M${n(-top)} ${y}A${n(top)} ${n(ry)} 0 0 0 ${n(top)} ${y}H${n(inner)}A${n(inner)} ${n(innerRy)} 0 0 1 ${n(-inner)} ${y}Z`
	return fill(d, finish.side(0.075))
}

/** Rim and mouth of a vessel with corners. */
export function squareOpening({ top, topDepth, height, lip }: Body, finish: Finish, pen: Pen): string {
	const [ry, innerRy] = [onPaper(topDepth), onPaper(topDepth - lip)]
	const box = (half: number, dy: number, colour: string) =>
		fill(`M${n(-half)} ${n(-height - dy)}H${n(half)}V${n(-height + dy)}H${n(-half)}Z`, colour)
	return box(top, ry, finish.side(0.07)) + box(top - lip, innerRy, depth(finish, pen))
}

export function nearEdge({ top, topDepth, height, lip }: Body, finish: Finish): string {
	const [ry, innerRy] = [onPaper(topDepth), onPaper(topDepth - lip)]
	return fill(
		`M${n(-top)} ${n(-height + ry)}H${n(top)}V${n(-height)}H${n(top - lip)}V${n(-height + innerRy)}H${n(-top + lip)}V${n(-height)}H${n(-top)}Z`,
		finish.side(0.085),
	)
}
