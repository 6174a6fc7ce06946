import type { Hex } from '../../units/hex'
import { between, diceOf } from '../pen/dice-of'
import { n, n2 } from '../pen/n'
import { fill } from '../pen/path'
import type { Pen } from '../pen/pen'
import { shade } from '../pen/shade'

const size = 23

/** Grains as a path of tiny diamonds. */
function grains(seed: string, count: number): string {
	const dice = diceOf(seed)
	return Array.from({ length: count }, () => {
		const [x, y, r] = [between(dice, 0.5, size - 0.5), between(dice, 0.5, size - 0.5), between(dice, 0.1, 0.26)]
		return `M${n(x)} ${n(y)}h${n2(r * 2)}v${n2(r * 1.6)}h${n2(-r * 1.4)}z`
	}).join('')
}

/** The grain of cast stone, as a value of `fill`. */
export function speckle(colour: Hex, { defs }: Pen): string {
	const dark = fill(grains('dark', 34), shade(colour, -0.16), 0.45)
	const pale = fill(grains('pale', 26), shade(colour, 0.1), 0.45)
	return `url(#${defs.add((id) => `<pattern id="${id}" width="${size}" height="${size}" patternUnits="userSpaceOnUse">${dark}${pale}</pattern>`)})`
}
