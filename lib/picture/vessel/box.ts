import { linear } from '../pen/gradient'
import { clamp, n } from '../pen/n'
import { fill, line, type Point, straight } from '../pen/path'
import type { Pen } from '../pen/pen'
import { boards } from './boards'
import type { Body } from './body'
import type { Drawn } from './drawn'
import { type Face, faceOf, part } from './face'
import { type Finish, finishOf } from './finish'
import { nearEdge, squareOpening } from './opening'
import { speckle } from './speckle'

function rimOf({ madeOf, height }: Body): number {
	if (madeOf === 'metal') return clamp(height * 0.05, 1.2, 2.4) / height
	if (madeOf === 'wood') return clamp(height * 0.09, 1.6, 4) / height
	return clamp(height * 0.1, 2, 5) / height
}

/** A sunk panel with its own light and shade, on faces large enough for one. */
function panel(face: Face, body: Body, finish: Finish): string {
	const [upper, lower] = [rimOf(body) + 0.1, 0.88]
	const inX = clamp(5 / body.top, 0.08, 0.3)
	const frame = part(face, [-1 + inX, 1 - inX], [upper, lower])
	const point = (across: number, down: number): Point => [face.half(down) * across, face.y(down)]
	const [left, right] = [-1 + inX, 1 - inX]
	const dark = straight([point(left, lower), point(left, upper), point(right, upper)])
	const pale = straight([point(right, upper), point(right, lower), point(left, lower)])
	return fill(frame, finish.plain(-0.02)) + line(dark, finish.plain(-0.13), 0.8) + line(pale, finish.plain(0.09), 0.7)
}

function work(body: Body, face: Face, finish: Finish, pen: Pen): string {
	if (body.madeOf === 'wood') return boards(body, face, finish)
	const hasPanel = body.height > 30 && body.top > 14 && (body.madeOf === 'resin' || body.shape === 'column')
	const grain = body.madeOf === 'cast stone' ? fill(part(face, [-1, 1], [0, 1]), speckle(body.colour, pen)) : ''
	const corners = `M${n(-face.half(0) + 0.5)} ${n(face.y(0))}L${n(-face.half(1) + 0.5)} ${n(face.y(1))}`
	return grain + (hasPanel ? panel(face, body, finish) : '') + line(corners, finish.plain(0.14), 0.6, 0.6)
}

export function box(body: Body, pen: Pen): Drawn {
	const finish = finishOf(body.madeOf, body.colour, false, pen)
	const face = faceOf({ ...body, top: body.top * (body.madeOf === 'metal' ? 1 : 0.97) })
	const rim = rimOf(body)
	const whole = part(face, [-1, 1], [0, 1])
	const falls = linear(pen.defs, 'down', [
		[0, 'black', 0.28],
		[0.3, 'black', 0],
		[0.75, 'black', 0],
		[1, 'black', 0.24],
	])
	const under = part(face, [-1, 1], [rim, rim + 1.4 / body.height])
	const front =
		fill(whole, finish.side()) +
		work(body, face, finish, pen) +
		fill(whole, falls) +
		fill(under, finish.plain(-0.2), 0.5) +
		fill(part({ half: () => body.top, y: face.y }, [-1, 1], [0, rim]), finish.side(0.025)) +
		nearEdge(body, finish)
	return { back: squareOpening(body, finish, pen), front }
}
