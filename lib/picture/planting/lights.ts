import { hex } from '../../units/hex'
import { between, diceOf, wobble } from '../pen/dice-of'
import { radial } from '../pen/gradient'
import { clamp, n } from '../pen/n'
import { type Point, smooth, line as stroke } from '../pen/path'
import type { Pen } from '../pen/pen'
import { shade } from '../pen/shade'
import type { SceneLine } from '../scene'
import type { Bed } from './bed'
import { endOf, type Place, wayOf } from './dome'
import type { Hand } from './hand'

/** Bulbs on a string, and so many of them in sight at most. */
const bulbsAString = 25
export const mostBulbs = 54

const wire = hex('#2b3a2c')

/** Where the string runs: to and fro over the near face, from the rim upwards, closer together where it bends back. */
function run(count: number, bed: Bed, reachCm: number, seed: string): Point[] {
	const dice = diceOf(seed)
	const rows = bed.isLong ? 3 : 5
	return Array.from({ length: count }, (_, index): Point => {
		const along = ((index + 0.5) / count) ** 1.45 * rows
		const row = Math.floor(along)
		const swing = (row % 2 === 0 ? 1 : -1) * (2 * (along - row) - 1)
		const up = clamp((along + wobble(dice, 0.7)) / rows, 0, 1)
		const out = clamp(1.08 - up * 0.9, 0.08, 1.08)
		const across = clamp(swing * (bed.isLong ? 1 : Math.sqrt(1 - (1 - out) ** 2 * 0.5)) + wobble(dice, 0.2), -1, 1)
		const near = Math.sqrt(Math.max(0, 1 - across * across))
		const place: Place = bed.isLong
			? { u: across, v: 0.7, to: [across * 0.25, clamp(out, 0, 1)] }
			: { u: across * out, v: near * out, to: [across * Math.max(out, 0.45), near * out] }
		return [...endOf(bed, place, wayOf(place, 96), reachCm * between(dice, 0.8, 1.2) * (1 - Math.max(0, out - 0.65)))]
	})
}

/** Strings wound through the greens: small bulbs by day, each with its own light in the evening. */
export function lights(lines: readonly SceneLine[], reachCm: number, { bed, which, pen }: Hand): string {
	const { defs, light } = pen
	return lines
		.map((line) => {
			const strings = Math.max(1, Math.round(line.count))
			const count = Math.min(mostBulbs, strings * bulbsAString)
			const points = run(count, bed, reachCm, `lights ${which} ${strings}`)
			const [first = [0, 0], ...rest] = points
			const string = stroke(smooth([first, ...rest]), light.tone(wire), 0.35, light.isEvening ? 0.5 : 0.4)
			const bulb = defs.add((id) => bulbAs(id, line, pen))
			return string + points.map(([x, y]) => `<use href="#${bulb}" x="${n(x)}" y="${n(y)}"/>`).join('')
		})
		.join('')
}

function bulbAs(id: string, { hex: colour }: SceneLine, { defs, light }: Pen): string {
	if (!light.isEvening) {
		return `<g id="${id}"><circle r=".75" fill="${shade(colour, 0)}"/><circle cx="-.2" cy="-.25" r=".3" fill="white" opacity=".9"/></g>`
	}
	const glow = radial(defs, [
		[0, shade(colour, 0.1), 0.8],
		[0.22, colour, 0.36],
		[1, colour, 0],
	])
	return `<g id="${id}"><circle r="4.2" fill="${glow}"/><circle r=".85" fill="${shade(colour, 0.14)}"/></g>`
}
