import type { WallKind } from '../../container/site'
import type { Hex } from '../../units/hex'
import { hex } from '../../units/hex'
import { linear } from '../pen/gradient'
import { n } from '../pen/n'
import { ellipse, fill, line, rect } from '../pen/path'
import type { Pen } from '../pen/pen'
import { shade } from '../pen/shade'
import { pane } from './pane'
import { trimOf } from './trim'

/** A door of three feet by six feet eight, its trim and its step, in cm. */
export const doorCm = { width: 91.4, height: 203.2, trim: 11, step: 15 } as const

const brass = hex('#b08d4f')

/** Raised or sunk, told by which sides catch the light. */
function panel(x: number, y: number, width: number, height: number, colour: Hex): string {
	const d = `M${n(x)} ${n(y + height)}v${n(-height)}h${n(width)}`
	const other = `M${n(x + width)} ${n(y)}v${n(height)}h${n(-width)}`
	return (
		rect(x, y, width, height, shade(colour, -0.025)) +
		line(d, shade(colour, -0.14), 1.1) +
		line(other, shade(colour, 0.08), 0.9) +
		rect(x + 3.5, y + 3.5, width - 7, height - 7, shade(colour, 0.015)) +
		line(`M${n(x + 3.5)} ${n(y + height - 3.5)}v${n(7 - height)}h${n(width - 7)}`, shade(colour, 0.07), 0.6) +
		line(`M${n(x + width - 3.5)} ${n(y + 3.5)}v${n(height - 7)}h${n(7 - width)}`, shade(colour, -0.1), 0.6)
	)
}

/** How doors are made before each kind of wall: lights across and down, panels across below, share of glass. */
const makes: Record<
	WallKind,
	{ readonly lights: readonly [number, number]; readonly panels: number; readonly glass: number }
> = {
	clapboard: { lights: [2, 2], panels: 1, glass: 0.46 },
	fieldstone: { lights: [3, 1], panels: 3, glass: 0.2 },
	stucco: { lights: [2, 1], panels: 2, glass: 0.3 },
	brick: { lights: [3, 3], panels: 2, glass: 0.48 },
	'shop glass': { lights: [1, 1], panels: 1, glass: 0.68 },
}

function leaf(kind: WallKind, colour: Hex, pen: Pen): string {
	const { width, height, step } = doorCm
	const { lights, panels, glass } = makes[kind]
	const [left, top] = [-width / 2, -height - step]
	const stile = 13
	const inner = width - 2 * stile
	const glassHigh = height * glass
	const belowTop = top + stile + glassHigh + 12
	const belowHigh = -step - 18 - belowTop
	const panelWide = (inner - (panels - 1) * 7) / panels
	const light = linear(pen.defs, 'slanting', [
		[0, shade(colour, 0.03)],
		[1, shade(colour, -0.035)],
	])
	const below = Array.from({ length: panels }, (_, index) =>
		panel(left + stile + index * (panelWide + 7), belowTop, panelWide, belowHigh, colour),
	).join('')
	return (
		rect(left, top, width, height, light) +
		pane([left + stile, top + stile, inner, glassHigh], lights, colour, pen) +
		below +
		handle(kind, left + width - 6.5, -step - 97, pen)
	)
}

function handle(kind: WallKind, x: number, y: number, { light }: Pen): string {
	const metal = light.tone(brass)
	if (kind === 'shop glass')
		return (
			line(`M${n(x)} ${n(y - 22)}v44`, shade(metal, -0.18), 2.4, 0.6) +
			line(`M${n(x - 0.4)} ${n(y - 22)}v44`, metal, 1.7) +
			line(`M${n(x - 0.8)} ${n(y - 21)}v42`, shade(metal, 0.18), 0.4, 0.8)
		)
	return (
		rect(x - 1.9, y - 8, 3.8, 17, shade(metal, -0.04), ' rx="1.4"') +
		ellipse(x + 0.5, y + 0.8, 3.1, 3.1, shade(metal, -0.24), 0.6) +
		ellipse(x, y, 3, 3, metal) +
		ellipse(x - 0.9, y - 1, 1.1, 0.9, shade(metal, 0.22), 0.9)
	)
}

/** Door, trim and head; the middle of the doorway at `x`, standing on its step. */
export function door(x: number, kind: WallKind, wall: Hex, colour: Hex, pen: Pen): string {
	const { width, height, trim, step } = doorCm
	const frame = pen.light.tone(kind === 'shop glass' ? wall : trimOf(wall))
	const top = -height - step
	const outer = width / 2 + trim
	const side = (from: number) =>
		rect(from, top - trim, trim, height + trim, frame) +
		line(
			`M${n(from + trim - 1.2)} ${n(top)}V${n(-step)}M${n(from + 1.2)} ${n(top - trim)}V${n(-step)}`,
			shade(frame, -0.1),
			0.5,
		)
	const head =
		rect(-outer, top - trim, outer * 2, trim, frame) +
		rect(-outer - 3.5, top - trim - 4.5, outer * 2 + 7, 4.5, shade(frame, 0.015)) +
		line(`M${n(-outer - 3.5)} ${n(top - trim)}h${n(outer * 2 + 7)}`, shade(frame, -0.24), 0.9, 0.7) +
		line(`M${n(-width / 2)} ${n(top - 0.4)}h${n(width)}`, shade(frame, -0.16), 0.8)
	const reveal = fill(
		`M${n(-width / 2)} ${n(-step)}V${n(top)}H${n(width / 2)}v3.4H${n(-width / 2 + 2.6)}V${n(-step)}z`,
		'black',
		0.28,
	)
	const sill = rect(-width / 2 - 2, -step - 3, width + 4, 3, shade(frame, -0.24))
	return `<g transform="translate(${n(x)} 0)">${side(-outer)}${side(width / 2)}${head}${leaf(kind, pen.light.tone(colour), pen)}${reveal}${sill}</g>`
}
