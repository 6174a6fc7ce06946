import { hex } from '../../../units/hex'
import type { DrawPiece } from '../../piece'
import { roll, times } from '../growth/roll'
import { size } from '../growth/size'
import { drawn } from '../ink/drawn'
import { fill, pen } from '../ink/layer'
import { ahead } from '../ink/point'
import { disc, polygon } from '../ink/shape'
import { tones } from '../ink/tones'
import { ball } from './ball'

const brass = hex('#b79a5e')

/** A ball with its cap, in the second colour or brass. */
export const globe: DrawPiece = (line, dice) => {
	const radiusCm = size(line.acrossCm, size(line.lengthCm, 8, 1, 60), 1, 60) / 2
	const metal = tones(line.secondHex ?? brass)
	return times(3, (_, variant) => {
		const lean = (variant - 1) * 0.45 + roll(dice, -0.12, 0.12)
		const top = ahead([0, -radiusCm], lean, radiusCm * 0.94)
		const cap = (u: number, v: number) => ahead(ahead(top, lean, radiusCm * v), lean + Math.PI / 2, radiusCm * u)
		return drawn([
			pen(metal.dark, radiusCm * 0.05, [disc(cap(0, 0.27), radiusCm * 0.1)]),
			...ball(tones(line.hex), [0, -radiusCm], radiusCm),
			fill(metal.base, [polygon([cap(-0.17, 0), cap(-0.15, 0.18), cap(0.15, 0.18), cap(0.17, 0)])]),
			fill(metal.light, [polygon([cap(-0.17, 0), cap(-0.15, 0.18), cap(-0.04, 0.18), cap(-0.05, 0)])]),
		])
	})
}
