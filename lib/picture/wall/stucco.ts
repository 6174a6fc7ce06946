import type { Hex } from '../../units/hex'
import { between, diceOf, wobble } from '../pen/dice-of'
import { radial } from '../pen/gradient'
import { n } from '../pen/n'
import { ellipse, line, rect } from '../pen/path'
import type { Pen } from '../pen/pen'
import { shade } from '../pen/shade'
import type { Area } from './area'
import { tiled } from './tile'

const [tileCm, highCm] = [190, 150]

/** Strokes of a float, each a short flat arc. */
function strokes(seed: string, count: number): string {
	const dice = diceOf(seed)
	return Array.from({ length: count }, () => {
		const [x, y, long] = [between(dice, 8, tileCm - 30), between(dice, 3, highCm - 4), between(dice, 5, 17)]
		return `M${n(x)} ${n(y)}q${n(long / 2)} ${n(wobble(dice, 3))} ${n(long)} ${n(wobble(dice, 2.5))}`
	}).join('')
}

function grit(seed: string, count: number): string {
	const dice = diceOf(seed)
	return Array.from(
		{ length: count },
		() => `M${n(between(dice, 1, tileCm - 1))} ${n(between(dice, 1, highCm - 1))}h.5`,
	).join('')
}

const drawn = { dark: strokes('dark', 40), pale: strokes('pale', 40), grit: grit('grit', 170) }

/** Floated plaster: soft clouds, the float's strokes, a little grit. */
export function stucco(area: Area, colour: Hex, pen: Pen): string {
	const dice = diceOf('clouds')
	const clouds = Array.from({ length: 7 }, (_, index) => {
		const tone = shade(colour, index % 2 === 0 ? 0.03 : -0.035)
		const soft = radial(pen.defs, [
			[0, tone, 0.75],
			[1, tone, 0],
		])
		const [rx, ry] = [between(dice, 26, 44), between(dice, 18, 34)]
		return ellipse(between(dice, rx, tileCm - rx), between(dice, ry, highCm - ry), rx, ry, soft)
	}).join('')
	const svg =
		rect(0, 0, tileCm, highCm, colour) +
		clouds +
		line(drawn.dark, shade(colour, -0.07), 0.5, 0.35) +
		line(drawn.pale, shade(colour, 0.06), 0.55, 0.5) +
		line(drawn.grit, shade(colour, -0.1), 0.45, 0.4)
	return tiled(area, [tileCm, highCm], svg, pen)
}
