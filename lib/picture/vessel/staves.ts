import { hex } from '../../units/hex'
import { n } from '../pen/n'
import { fill, line } from '../pen/path'
import { shade } from '../pen/shade'
import { type Body, onPaper } from './body'
import type { Finish } from './finish'
import { frontArc, halfAt, type Profile, sideBetween } from './round-side'

const iron = hex('#3b3a38')
const count = 9

const turnAt = (index: number): number => Math.sin(((index / count) * 2 - 1) * (Math.PI / 2))

function stave(body: Body, profile: Profile, index: number, finish: Finish): string {
	const edge = (turn: number, above: number) => {
		const half = halfAt(profile, above)
		return `${n(half * turn)} ${n(-above + onPaper(half) * Math.sqrt(1 - turn * turn))}`
	}
	const [left, right] = [turnAt(index), turnAt(index + 1)]
	const tone = [0.02, -0.015, 0.03, -0.03, 0.01, 0.025, -0.02, 0.015, -0.01][index] ?? 0
	const d = `M${edge(left, 0)}L${edge(left, body.height)}L${edge(right, body.height)}L${edge(right, 0)}Z`
	return fill(d, finish.plain(tone - 0.1 * Math.max(0, left + 0.1) + 0.03 * (left < 0 ? 1 + left : 0)))
}

function joints(body: Body, profile: Profile): string {
	return Array.from({ length: count - 1 }, (_, index) => {
		const turn = turnAt(index + 1)
		const point = (above: number) => {
			const half = halfAt(profile, above)
			return `${n(half * turn)} ${n(-above + onPaper(half) * Math.sqrt(1 - turn * turn))}`
		}
		return `M${point(0)}L${point(body.height)}`
	}).join('')
}

/** A coopered side: staves, and two hoops of iron. */
export function staves(body: Body, profile: Profile, finish: Finish): string {
	const hoop = (share: number) => {
		const [from, to] = [body.height * share, body.height * share + Math.min(3, body.height * 0.07)]
		const upper = halfAt(profile, to)
		return (
			fill(sideBetween(profile, from, to, 0.2), finish.plain(-0.2)) +
			fill(sideBetween(profile, from, to, 0), shade(iron, 0.02), 0.85) +
			line(frontArc(upper, -to + 0.3), 'white', 0.4, 0.25)
		)
	}
	const wood = Array.from({ length: count }, (_, index) => stave(body, profile, index, finish)).join('')
	return wood + line(joints(body, profile), finish.plain(-0.2), 0.5, 0.8) + hoop(0.14) + hoop(0.72)
}
