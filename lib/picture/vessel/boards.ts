import { diceOf, wobble } from '../pen/dice-of'
import { n } from '../pen/n'
import { fill, line } from '../pen/path'
import type { Body } from './body'
import { type Face, part } from './face'
import type { Finish } from './finish'

/** Long boxes are boarded lengthwise, high ones upright; all have posts at their corners. */
export function boards(body: Body, face: Face, finish: Finish): string {
	const dice = diceOf('boards')
	const isLong = body.top * 2 > body.height * 1.3
	const count = Math.max(2, Math.round(isLong ? body.height / 10 : body.top / 5))
	const wood = Array.from({ length: count }, (_, index) => {
		const [from, to] = [index / count, (index + 1) / count]
		const d = isLong ? part(face, [-1, 1], [from, to]) : part(face, [from * 2 - 1, to * 2 - 1], [0, 1])
		return fill(d, finish.plain(wobble(dice, 0.035)))
	}).join('')
	const joints = Array.from({ length: count - 1 }, (_, index) => {
		const at = (index + 1) / count
		if (isLong) return `M${n(-face.half(at))} ${n(face.y(at))}H${n(face.half(at))}`
		return `M${n(face.half(0) * (at * 2 - 1))} ${n(face.y(0))}L${n(face.half(1) * (at * 2 - 1))} ${n(face.y(1))}`
	}).join('')
	const post = Math.min(0.16, 4.5 / body.top)
	const posts = [part(face, [-1, -1 + post], [0, 1]), part(face, [1 - post, 1], [0, 1])]
	return (
		wood +
		line(joints, finish.plain(-0.2), 0.7, 0.8) +
		fill(posts.join(''), finish.plain(0.03)) +
		line(part(face, [-1 + post, 1 - post], [0, 1]), finish.plain(-0.16), 0.6, 0.7)
	)
}
