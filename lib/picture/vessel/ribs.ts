import { n } from '../pen/n'
import { line } from '../pen/path'
import { type Body, onPaper } from './body'
import type { Finish } from './finish'
import { halfAt, type Profile } from './round-side'

/** Gadroons round the lower bowl of an urn: evenly round the circle, so closer together towards the sides. */
export function ribs({ height }: Body, profile: Profile, finish: Finish): string {
	const [low, high] = [height * 0.34, height * 0.6]
	const d = Array.from({ length: 11 }, (_, index) => {
		const turn = Math.sin(((index - 5) / 5.6) * (Math.PI / 2))
		const drop = Math.sqrt(1 - turn * turn)
		const point = (above: number) => {
			const half = halfAt(profile, above)
			return `${n(half * turn)} ${n(-above + onPaper(half) * drop)}`
		}
		return `M${point(low)}Q${point((low + high) / 2 - height * 0.03)} ${point(high)}`
	}).join('')
	return line(d, finish.plain(-0.16), 0.8, 0.5)
}
