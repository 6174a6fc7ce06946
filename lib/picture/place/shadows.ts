import { radial } from '../pen/gradient'
import { ellipse } from '../pen/path'
import { type Pen, tilt } from '../pen/pen'
import { contact } from '../wall/contact'
import type { Stood } from './stood'

const soft = (dark: number, { defs }: Pen): string =>
	radial(defs, [
		[0, 'black', dark],
		[0.55, 'black', dark * 0.72],
		[1, 'black', 0],
	])

/** Where a pot meets the ground, and its shade to the right of it. */
export function onGround({ body, x, y, isHung }: Stood, pen: Pen): string {
	if (isHung) return ''
	const { bottom, bottomDepth } = body
	const deep = bottomDepth * tilt
	const evening = pen.light.isEvening
	return (
		ellipse(
			x + bottom * (evening ? 0 : 0.42),
			y + deep * 0.3 - 0.5,
			bottom * (evening ? 1.45 : 1.75),
			deep * 1.15 + 3,
			soft(0.34, pen),
		) +
		(body.isRound
			? ellipse(x + 0.8, y + deep * 0.25, bottom * 1.1, deep + 2.2, soft(0.62, pen))
			: contact(x, y + deep, bottom, pen))
	)
}

/** By day pot and planting throw a soft shade on the wall behind them. */
export function onWall({ body, x, y, tip, elbow, isHung }: Stood, pen: Pen): string {
	if (pen.light.isEvening) return ''
	const off = isHung ? 5 : 15
	const { top, height } = body
	const stem = ellipse(x + off, y - height * 0.5, top * 1.25, height * 0.72, soft(isHung ? 0.2 : 0.15, pen))
	return stem + ellipse(x + off, y - height - tip * 0.22 + 4, elbow * 1.15, tip * 0.52 + 16, soft(0.22, pen))
}
