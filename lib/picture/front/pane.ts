import type { Hex } from '../../units/hex'
import { hex } from '../../units/hex'
import { linear } from '../pen/gradient'
import { n } from '../pen/n'
import { fill, line, rect } from '../pen/path'
import type { Pen } from '../pen/pen'
import { shade } from '../pen/shade'

const day = { sky: hex('#8fa3ab'), room: hex('#2c3a3f') }
const night = { dark: hex('#141b26'), lamp: hex('#f0bd6d'), low: hex('#9a6434') }

/** Glass by the hour: sky above and a dim room below by day; in the evening dark, or warm where lights are. */
export function glassOf({ defs, light }: Pen): string {
	if (!light.isEvening)
		return linear(defs, 'slanting', [
			[0, shade(day.sky, -0.08)],
			[0.45, shade(day.room, 0.07)],
			[1, day.room],
		])
	if (!light.isLit)
		return linear(defs, 'down', [
			[0, shade(night.dark, 0.06)],
			[1, night.dark],
		])
	return linear(defs, 'down', [
		[0, shade(night.lamp, -0.13)],
		[0.5, shade(night.lamp, -0.05)],
		[1, night.low],
	])
}

/** A window's glass with its bars; `box` is left, top, width and height. */
export function pane(
	[x, y, width, height]: readonly [number, number, number, number],
	[across, down]: readonly [number, number],
	bar: Hex,
	pen: Pen,
): string {
	const bars = [
		...Array.from(
			{ length: across - 1 },
			(_, index) => `M${n(x + (width * (index + 1)) / across)} ${n(y)}v${n(height)}`,
		),
		...Array.from({ length: down - 1 }, (_, index) => `M${n(x)} ${n(y + (height * (index + 1)) / down)}h${n(width)}`),
	].join('')
	const gleam = `M${n(x + width * 0.12)} ${n(y)}h${n(width * 0.2)}L${n(x)} ${n(y + Math.min(height, width * 0.75))}V${n(y + Math.min(height, width * 0.3))}z`
	return (
		rect(x - 1.6, y - 1.6, width + 3.2, height + 3.2, shade(bar, -0.09)) +
		rect(x, y, width, height, glassOf(pen)) +
		fill(gleam, 'white', pen.light.isEvening ? 0.05 : 0.13) +
		`<path d="M${n(x)} ${n(y + height)}V${n(y)}H${n(x + width)}v1.6H${n(x + 1.4)}V${n(y + height)}z" opacity=".3"/>` +
		(bars === '' ? '' : line(bars, shade(bar, -0.12), 3.4) + line(bars, shade(bar, 0.01), 2.6))
	)
}
