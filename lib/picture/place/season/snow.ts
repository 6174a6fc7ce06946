import { hex } from '../../../units/hex'
import { between, diceOf, wobble } from '../../pen/dice-of'
import { n } from '../../pen/n'
import { fill } from '../../pen/path'
import type { Pen } from '../../pen/pen'
import { shade } from '../../pen/shade'

const white = hex('#f3f6f8')

/** A drift that lies along a line: its upper edge rises and falls, its ends run out. */
export function drift(from: number, to: number, y: number, highCm: number, seed: string, { light }: Pen): string {
	const dice = diceOf(`drift ${seed}`)
	const steps = Math.max(4, Math.round((to - from) / 14))
	const wide = (to - from) / steps
	const humps = Array.from({ length: steps }, (_, index) => {
		const ends = Math.min(1, (index + 0.6) / 1.6, (steps - index - 0.4) / 1.6)
		const rise = highCm * ends * between(dice, 0.5, 1.15)
		const end = index === steps - 1 ? 0 : highCm * 0.5 * ends
		const x = from + wide * (index + 1)
		return `Q${n(x - wide / 2 + wobble(dice, 2))} ${n(y - rise)} ${n(x)} ${n(y - end)}`
	}).join('')
	const snow = light.tone(white)
	const d = `M${n(from)} ${n(y)}${humps}Q${n((from + to) / 2)} ${n(y + 0.8)} ${n(from)} ${n(y)}z`
	return `${fill(d, shade(snow, -0.09))}<g transform="translate(-.3 -.45)">${fill(d, snow)}</g>`
}
