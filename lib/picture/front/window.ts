import type { WallKind } from '../../container/site'
import type { Hex } from '../../units/hex'
import { n } from '../pen/n'
import { line, rect } from '../pen/path'
import type { Pen } from '../pen/pen'
import { shade } from '../pen/shade'
import { pane } from './pane'
import { stoneOf, trimOf } from './trim'

export const windowTrimCm = 9
const glassHighCm = 112

/** A window over a box: its glass begins at `glassY`, its glass is `glassWide` across, its middle at `x`. */
export function windowOver(x: number, glassY: number, glassWide: number, kind: WallKind, wall: Hex, pen: Pen): string {
	const frame = pen.light.tone(trimOf(wall))
	const sillStone = kind === 'clapboard' ? shade(frame, 0.01) : pen.light.tone(stoneOf(wall))
	const half = glassWide / 2
	const [rail, trim] = [4, windowTrimCm]
	const top = glassY - glassHighCm - rail
	const across = glassWide > 95 ? 4 : 2
	const casing =
		rect(-half - rail - trim, top - trim, (half + rail + trim) * 2, glassY + rail - top + trim, frame) +
		line(
			`M${n(-half - rail - trim + 1)} ${n(glassY + rail)}V${n(top - trim + 1)}H${n(half + rail + trim - 1)}V${n(glassY + rail)}`,
			shade(frame, -0.1),
			0.5,
		)
	const head =
		rect(-half - rail - trim - 2.5, top - trim - 4, (half + rail + trim) * 2 + 5, 4, shade(frame, 0.015)) +
		line(
			`M${n(-half - rail - trim - 2.5)} ${n(top - trim)}h${n((half + rail + trim) * 2 + 5)}`,
			shade(frame, -0.22),
			0.8,
			0.7,
		)
	const sash =
		rect(-half - rail, top, (half + rail) * 2, glassY + rail - top, shade(frame, -0.03)) +
		pane([-half, glassY - glassHighCm, glassWide, glassHighCm], [across, 2], frame, pen)
	const meeting = rect(-half - rail, glassY - glassHighCm / 2 - 2, (half + rail) * 2, 4.4, shade(frame, -0.01))
	const sillHalf = half + rail + trim + 4
	const sill =
		rect(-sillHalf, glassY + rail - 0.5, sillHalf * 2, 5, shade(sillStone, 0.02)) +
		rect(-sillHalf, glassY + rail + 3.4, sillHalf * 2, 1.6, shade(sillStone, -0.12)) +
		rect(-sillHalf + 2, glassY + rail + 4.5, sillHalf * 2 - 4, 3.4, 'black', ' opacity=".16"')
	return `<g transform="translate(${n(x)} 0)">${casing}${head}${sash}${meeting}${sill}</g>`
}
