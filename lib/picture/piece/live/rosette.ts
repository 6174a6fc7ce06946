import type { Dice, DrawPiece } from '../../piece'
import { roll, times } from '../growth/roll'
import { size } from '../growth/size'
import { drawn } from '../ink/drawn'
import { fill, type Layer, pen } from '../ink/layer'
import type { Point } from '../ink/point'
import { closed, type Leg, type Line, line } from '../ink/shape'
import { leafGreen, tones } from '../ink/tones'

type Ring = { readonly centre: Point; readonly wideCm: number; readonly highCm: number; readonly frills: number }

/** A ring of frilled leaves seen from the side and above: a wavy oval. */
function frill({ centre: [x, y], wideCm, highCm, frills }: Ring, dice: Dice): Line {
	const at = (step: number, share: number): Point => {
		const turn = (step / frills) * 2 * Math.PI
		return [x + (wideCm / 2) * share * Math.sin(turn), y - (highCm / 2) * share * Math.cos(turn)]
	}
	const legs = times(
		frills,
		(_, index): Leg => [at(index + 0.5, roll(dice, 1.08, 1.22)), at(index + 1, index === frills - 1 ? 0.93 : 0.93)],
	)
	return closed(at(0, 0.93), ...legs)
}

const veins = ({ centre, wideCm, highCm, frills }: Ring): Line[] =>
	times(Math.round(frills / 2), (_, index) => {
		const turn = ((index + 0.25) / Math.round(frills / 2)) * 2 * Math.PI
		const at = (share: number): Point => [
			centre[0] + (wideCm / 2) * share * Math.sin(turn),
			centre[1] - (highCm / 2) * share * Math.cos(turn),
		]
		return line(at(0.55), [at(0.92)])
	})

/** Ornamental kale: its heart in the first colour, its outer leaves in the second. */
export const rosette: DrawPiece = (line_, dice) => {
	const acrossCm = size(line_.acrossCm, 26)
	const heightCm = size(line_.lengthCm, acrossCm * 0.62, acrossCm * 0.4, acrossCm * 1.2)
	const heart = tones(line_.hex)
	const green = tones(line_.secondHex ?? leafGreen)
	return times(3, () => {
		const ring = (share: number, lift: number, frills: number): Ring => ({
			centre: [roll(dice, -0.01, 0.01) * acrossCm, -heightCm * (0.46 + lift)],
			wideCm: acrossCm * 0.9 * share,
			highCm: heightCm * 0.8 * share,
			frills,
		})
		const layer = (of: Ring, colour: Layer['colour'], rib: Layer['colour']): Layer[] => [
			fill(colour, [frill(of, dice)]),
			pen(rib, acrossCm * 0.012, veins(of)),
		]
		return drawn(
			[
				...layer(ring(1, 0, 15), green.dark, green.base),
				...layer(ring(0.86, 0.03, 13), green.base, green.light),
				...layer(ring(0.68, 0.07, 12), heart.dark, heart.base),
				...layer(ring(0.52, 0.1, 11), heart.base, heart.light),
				...layer(ring(0.35, 0.13, 9), heart.light, heart.pale),
				...layer(ring(0.19, 0.15, 7), heart.pale, heart.light),
			],
			{ fitCm: heightCm },
		)
	})
}
