import type { DrawPiece } from '../../piece'
import { roll, times } from '../growth/roll'
import { size } from '../growth/size'
import { drawn } from '../ink/drawn'
import { fill, type Layer, pen } from '../ink/layer'
import { ahead, type Point } from '../ink/point'
import { disc, line as stroke } from '../ink/shape'
import { barkBrown, type Tones, tones } from '../ink/tones'
import { ball } from './ball'

/** A ball before another: the shade that it throws around it. */
const before = (of: Tones, centre: Point, radiusCm: number): Layer[] => [
	fill(of.deep, [disc([centre[0] + radiusCm * 0.02, centre[1] + radiusCm * 0.02], radiusCm * 1.06)]),
	...ball(of, centre, radiusCm),
]

/** Three balls wired to one stake; one of them takes the second colour. */
export const cluster: DrawPiece = (line, dice) => {
	const acrossCm = size(line.acrossCm, 15, 2, 80)
	const heightCm = size(line.lengthCm, acrossCm * 1.15, acrossCm * 0.95, acrossCm * 6)
	const first = tones(line.hex)
	const second = tones(line.secondHex ?? line.hex)
	return times(3, (_, variant) => {
		const radius = acrossCm * 0.262
		const flip = variant === 1 ? -1 : 1
		const middle: Point = [0, -heightCm + radius * 2.05]
		const turned = flip * (variant === 2 ? Math.PI / 3 : 0) + roll(dice, -0.15, 0.15)
		const at = (third: number): Point => ahead(middle, turned + (flip * third * 2 * Math.PI) / 3, radius * 1.06)
		return drawn(
			[
				pen(barkBrown, acrossCm * 0.03, [stroke([0, 0], [middle])]),
				...ball(first, at(0), radius),
				...before(second, at(1), radius * 0.93),
				...before(first, at(2), radius * 0.98),
			],
			{ fitCm: heightCm },
		)
	})
}
