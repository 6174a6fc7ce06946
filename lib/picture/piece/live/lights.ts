import { hex } from '../../../units/hex'
import type { DrawPiece } from '../../piece'
import { roll, side, times } from '../growth/roll'
import { drawn } from '../ink/drawn'
import { pen } from '../ink/layer'
import { ahead, type Point } from '../ink/point'
import { dot, type Leg, line as stroke } from '../ink/shape'
import { tones } from '../ink/tones'

const wire = hex('#46543f')
const swags = 3
const swagCm = 12

/** Three swags of a string, its bulbs small and warm, by day; the scene lets them shine. A string has no size of its own. */
export const lights: DrawPiece = (line, dice) => {
	const { pale, base, dark } = tones(line.hex)
	return times(3, () => {
		const hooks = times(swags + 1, (t): Point => [(t - 0.5) * swags * swagCm, -7 - roll(dice, 0, 3)])
		const sags = times(swags, () => roll(dice, 5, 8))
		const under = (index: number, share: number): Point => {
			const [from = [0, 0], to = [0, 0]] = hooks.slice(index, index + 2)
			const sag = 4 * share * (1 - share) * (sags[index] ?? 0) * 0.9
			return [from[0] + (to[0] - from[0]) * share, from[1] + (to[1] - from[1]) * share + sag]
		}
		const legs = sags.map((sag, index): Leg => {
			const [from = [0, 0], to = [0, 0]] = hooks.slice(index, index + 2)
			return [[(from[0] + to[0]) / 2, (from[1] + to[1]) / 2 + sag * 1.8], to]
		})
		const bulbs = times(swags * 4, (_, index) =>
			ahead(under(Math.floor(index / 4), ((index % 4) + 0.5) / 4), Math.PI + side(index) * 0.5, 0.7),
		)
		return drawn([
			pen(line.secondHex ?? wire, 0.3, [stroke(hooks[0] ?? [0, 0], ...legs)]),
			pen(dark, 1.4, bulbs.map(dot)),
			pen(base, 1.15, bulbs.map(dot)),
			pen(
				pale,
				0.5,
				bulbs.map(([x, y]) => dot([x - 0.15, y - 0.15])),
			),
		])
	})
}
