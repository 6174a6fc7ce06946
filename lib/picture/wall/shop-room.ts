import { hex } from '../../units/hex'
import { linear, radial } from '../pen/gradient'
import { n } from '../pen/n'
import { ellipse, fill, line, rect } from '../pen/path'
import type { Pen } from '../pen/pen'

const warm = { high: hex('#b9844a'), low: hex('#3d2c22'), lamp: hex('#ffd795'), bulb: hex('#fff3d6') }

/** A stretch of glass: left, top, width and height, in cm. */
export type Glass = readonly [x: number, y: number, width: number, height: number]

/** The other side of the street in the glass: roofs and gaps, hardly darker than the sky. */
export function opposite([x, y, width, height]: Glass, { light }: Pen): string {
	const roofs = [0.2, 0.2, 0.38, 0.1, 0.3, 0.3, 0.16, 0.4, 0.4, 0.22]
	const foot = y + height
	const top = roofs.map(
		(share, index) => `L${n(x + (width * index) / (roofs.length - 1))} ${n(foot - height * (0.34 + share * 0.7))}`,
	)
	return fill(`M${n(x)} ${n(foot)}${top.join('')}L${n(x + width)} ${n(foot)}z`, 'black', light.isEvening ? 0.12 : 0.1)
}

/** Jars and boxes on a shelf, as one sees them against the light. */
function shelf([x, , width]: Glass, y: number): string {
	const wares = [9, 14, 7, 16, 11, 13, 8, 15]
	const step = (width - 16) / wares.length
	const shapes = wares.map((high, index) => {
		const wide = Math.min(8, step * 0.55)
		return `M${n(x + 10 + index * step)} ${n(y)}v${n(-high)}h${n(wide)}v${n(high)}z`
	})
	return fill(shapes.join(''), 'black', 0.2) + rect(x + 4, y, width - 8, 1.8, 'black', ' opacity=".3"')
}

/** The shop lit from within: two lamps, what they light, and a shelf. */
export function litRoom(glass: Glass, { defs }: Pen): string {
	const [x, y, width, height] = glass
	const room = linear(defs, 'down', [
		[0, warm.high],
		[0.55, hex('#7d5733')],
		[1, warm.low],
	])
	const halo = radial(defs, [
		[0, warm.lamp, 0.75],
		[0.3, warm.lamp, 0.3],
		[1, warm.lamp, 0],
	])
	const lamp = (share: number) => {
		const at = x + width * share
		return (
			line(`M${n(at)} ${n(y)}v26`, 'black', 0.5, 0.5) +
			ellipse(at, y + 36, 46, 40, halo) +
			fill(`M${n(at)} ${n(y + 24)}l8 9h-16z`, 'black', 0.6) +
			ellipse(at, y + 34, 4, 2.2, warm.bulb)
		)
	}
	return rect(x, y, width, height, room) + lamp(0.3) + lamp(0.72) + shelf(glass, y + height * 0.62)
}
