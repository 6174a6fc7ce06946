import type { Dice, DrawPiece } from '../../piece'
import { band, limb } from '../growth/band'
import { alternate, roll, side, times } from '../growth/roll'
import { size } from '../growth/size'
import { type Spot, spotAt, walk } from '../growth/walk'
import { drawn } from '../ink/drawn'
import { fill } from '../ink/layer'
import { tones } from '../ink/tones'

/** Sways to and fro, faster towards the tip. */
const sway = (dice: Dice, strength: number) => {
	const phase = roll(dice, 0, 2 * Math.PI)
	return (t: number) => strength * (0.55 + 0.6 * t) * Math.sin(phase + 15 * t + 5 * t * t)
}

/** Where side branches leave. */
const leaves = [0.28, 0.4, 0.5, 0.6, 0.7, 0.8, 0.89] as const

/** A side branch that winds outwards and ends in a hook. */
function curl(main: readonly Spot[], t: number, to: -1 | 1, lengthCm: number, dice: Dice): readonly Spot[] {
	const { at, heading } = spotAt(main, t)
	const phase = roll(dice, 0, 1.2)
	return walk({
		from: at,
		heading: heading * 0.4 + to * roll(dice, 0.55, 0.95),
		lengthCm: lengthCm * (0.56 - 0.38 * t) * roll(dice, 0.8, 1.15),
		legs: 8,
		turn: (along) => to * (0.62 * Math.sin(phase + 9 * along) - 0.12) * (along > 0.8 ? 1.5 : 1),
	})
}

/** Curly willow, contorted hazel. */
export const twistingStems: DrawPiece = (line, dice) => {
	const lengthCm = size(line.lengthCm, 100)
	const thickCm = lengthCm * 0.017
	const spread = size(line.acrossCm, lengthCm * 0.3, lengthCm * 0.2, lengthCm * 0.6) / (lengthCm * 0.3)
	const curlCm = lengthCm * (0.6 + 0.4 * spread)
	const half = (share: number) => (t: number) => (thickCm / 2) * (1 - 0.78 * t) * share
	const { light, base, dark } = tones(line.hex)
	return times(4, (_, variant) => {
		const main = walk({ from: [0, 0], heading: roll(dice, -0.1, 0.1), lengthCm, legs: 13, turn: sway(dice, 0.42) })
		const curls = leaves.map((t, index) =>
			limb(curl(main, t + roll(dice, -0.03, 0.03), side(index + variant), curlCm, dice), thickCm * 0.5, thickCm * 0.13),
		)
		const [front, back] = alternate(curls)
		return drawn(
			[
				fill(dark, back),
				fill(base, [limb(main, thickCm, thickCm * 0.2), ...front]),
				fill(dark, [band(main, half(0.25), half(1))]),
				fill(light, [band(main, half(-0.75), half(-0.3))]),
			],
			{ fitCm: lengthCm },
		)
	})
}
