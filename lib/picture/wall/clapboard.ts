import type { Hex } from '../../units/hex'
import { between, diceOf, wobble } from '../pen/dice-of'
import { linear } from '../pen/gradient'
import { n } from '../pen/n'
import { line, rect } from '../pen/path'
import type { Pen } from '../pen/pen'
import { shade } from '../pen/shade'
import type { Area } from './area'
import { tiled } from './tile'

/** What shows of a board, in cm: about four and a half inches. */
const reveal = 11.5
const rows = 8
const tileCm = 310

function grain(seed: string): string {
	const dice = diceOf(seed)
	return Array.from({ length: 34 }, () => {
		const y = Math.floor(dice() * rows) * reveal + between(dice, 3, 10)
		return `M${n(between(dice, 0, tileCm - 60))} ${n(y)}q${n(between(dice, 10, 25))} ${n(wobble(dice, 0.5))} ${n(between(dice, 30, 60))} ${n(wobble(dice, 0.4))}`
	}).join('')
}

/** Boards that lap over one another: each throws a line of shade on the next and catches light on its lower edge. */
export function clapboard(area: Area, colour: Hex, pen: Pen): string {
	const dice = diceOf('clapboard')
	const face = linear(pen.defs, 'down', [
		[0, shade(colour, -0.15)],
		[0.1, shade(colour, -0.06)],
		[0.24, colour],
		[0.88, shade(colour, 0.02)],
		[0.93, shade(colour, 0.055)],
		[0.96, shade(colour, 0.05)],
		[0.97, shade(colour, -0.19)],
		[1, shade(colour, -0.22)],
	])
	const boards = Array.from({ length: rows }, (_, row) => {
		const y = row * reveal
		const tint = wobble(dice, 0.05)
		const joint = between(dice, 10, tileCm - 10)
		return (
			rect(0, y, tileCm, reveal, face) +
			rect(0, y, tileCm, reveal, tint > 0 ? 'white' : 'black', ` opacity="${Math.abs(tint).toFixed(3)}"`) +
			line(`M${n(joint)} ${n(y + 0.6)}v${n(reveal - 1)}`, shade(colour, -0.2), 0.3, 0.7)
		)
	}).join('')
	return tiled(area, [tileCm, rows * reveal], boards + line(grain('grain'), shade(colour, -0.12), 0.25, 0.35), pen)
}
