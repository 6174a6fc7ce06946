import type { Hex } from '../../units/hex'
import { glassOf } from '../front/pane'
import { n } from '../pen/n'
import { fill, line, rect } from '../pen/path'
import type { Pen } from '../pen/pen'
import { shade } from '../pen/shade'
import { type Area, type Gap, widthOf } from './area'
import { type Glass, litRoom, opposite } from './shop-room'

/** Heights above the ground, in cm: glass begins over the bulkhead, small lights over the transom, a fascia over all. */
const transomCm = 214
const fasciaCm = 252
const paneCm = 118
const bulkheadCm = 56

/** One bay: a sunk panel below, glass above. */
function bay(x: number, width: number, sill: number, frame: Hex, pen: Pen): string {
	const panel = (left: number, top: number, wide: number, high: number) =>
		rect(left, top, wide, high, shade(frame, -0.03)) +
		line(`M${n(left)} ${n(top + high)}V${n(top)}h${n(wide)}`, shade(frame, -0.13), 1) +
		line(`M${n(left + wide)} ${n(top)}v${n(high)}h${n(-wide)}`, shade(frame, 0.08), 0.8)
	const glass = glassOf(pen)
	const high = transomCm - sill
	const shown: Glass = [x, -transomCm, width, high]
	const gleam = (from: number, wide: number) =>
		`M${n(x + width * from)} ${n(-transomCm)}h${n(width * wide)}L${n(x + Math.max(0, width * from - high * 0.42))} ${n(-sill)}h${n(-width * wide * 0.5)}z`
	return (
		panel(x + 5, -sill + 13, width - 10, sill - 26) +
		(pen.light.isLit ? litRoom(shown, pen) : rect(x, -transomCm, width, high, glass) + opposite(shown, pen)) +
		fill(gleam(0.34, 0.2) + gleam(0.66, 0.07), 'white', pen.light.isEvening ? 0.03 : 0.085) +
		fill(`M${n(x)} ${n(-sill)}V${n(-transomCm)}h${n(width)}v2.4H${n(x + 2)}V${n(-sill)}z`, 'black', 0.3) +
		rect(x, -fasciaCm + 6, width, fasciaCm - transomCm - 12, glass) +
		fill(
			`M${n(x)} ${n(-transomCm - 6)}V${n(-fasciaCm + 6)}h${n(width)}v2H${n(x + 1.6)}V${n(-transomCm - 6)}z`,
			'black',
			0.3,
		)
	)
}

function stretch(from: number, to: number, sill: number, frame: Hex, pen: Pen): string {
	const count = Math.max(1, Math.round((to - from) / paneCm))
	const [wide, bar] = [(to - from) / count, 5]
	return Array.from({ length: count }, (_, index) => {
		const x = from + index * wide
		const post = x + wide - bar / 2
		return (
			bay(x + bar / 2, wide - bar, sill, frame, pen) +
			line(`M${n(post)} ${n(-sill)}V${n(-fasciaCm)}`, shade(frame, 0.09), 0.6, 0.8) +
			line(`M${n(post + bar - 0.3)} ${n(-sill)}V${n(-fasciaCm)}`, shade(frame, -0.14), 0.7, 0.8)
		)
	}).join('')
}

/** A shop's front in the colour of its frame, glass either side of the door; `sillCm` at least above the ground. */
export function shopGlass(area: Area, colour: Hex, gaps: readonly Gap[], pen: Pen, leastSillCm = 0): string {
	const sill = Math.max(bulkheadCm, leastSillCm)
	const edges = [area.left - 30, ...gaps.flatMap(({ from, to }) => [from, to]), area.right + 30]
	const stretches = Array.from({ length: edges.length / 2 }, (_, index) =>
		stretch(edges[index * 2] ?? 0, edges[index * 2 + 1] ?? 0, sill, colour, pen),
	).join('')
	const across = (y: number, high: number, by: number) => rect(area.left, y, widthOf(area), high, shade(colour, by))
	const cornice =
		across(-fasciaCm - 4, 4, 0.06) +
		across(-fasciaCm - 48, 44, -0.015) +
		line(
			`M${n(area.left)} ${n(-fasciaCm - 42)}H${n(area.right)}M${n(area.left)} ${n(-fasciaCm - 10)}H${n(area.right)}`,
			shade(colour, -0.1),
			0.8,
		) +
		across(-fasciaCm - 55, 7, 0.07) +
		across(-fasciaCm - 48, 1.6, -0.15)
	const ledge = across(-sill - 1, 5, 0.07) + across(-sill + 4, 1.4, -0.15)
	const foot = across(-9, 9, -0.05) + line(`M${n(area.left)} -9H${n(area.right)}`, shade(colour, 0.06), 0.7)
	const transom = across(-transomCm - 6, 6, 0.04) + across(-transomCm - 0.6, 1, -0.14)
	return rect(area.left, area.top, widthOf(area), -area.top, colour) + stretches + transom + ledge + foot + cornice
}
