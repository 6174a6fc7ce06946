import type { Hex } from '../../units/hex'
import { stoneOf, trimOf } from '../front/trim'
import { linear } from '../pen/gradient'
import { n } from '../pen/n'
import { line, rect } from '../pen/path'
import type { Pen } from '../pen/pen'
import { hexOf, lchOf, shade } from '../pen/shade'
import type { Scene } from '../scene'
import { type Area, type Gap, widthOf } from './area'
import { brick } from './brick'
import { clapboard } from './clapboard'
import { fieldstone } from './fieldstone'
import { shopGlass } from './shop-glass'
import { stucco } from './stucco'

function faceOf(area: Area, { kind, hex }: Scene['wall'], gaps: readonly Gap[], sillCm: number, pen: Pen): string {
	const colour = pen.light.tone(hex)
	switch (kind) {
		case 'clapboard':
			return clapboard(area, colour, pen)
		case 'brick':
			return brick(area, colour, pen)
		case 'stucco':
			return stucco(area, colour, pen)
		case 'fieldstone':
			return fieldstone(area, colour, pen)
		case 'shop glass':
			return shopGlass(area, colour, gaps, pen, sillCm)
		default: {
			const never: never = kind
			return never
		}
	}
}

/** Height of what runs along the foot of a wall, in cm; stone and shop fronts come down to the ground. */
const skirtingCm: Record<Scene['wall']['kind'], number> = {
	clapboard: 20,
	brick: 13,
	stucco: 24,
	fieldstone: 0,
	'shop glass': 0,
}

/** Runs along the foot of the wall, and stops at a door. */
function skirting(area: Area, { kind, hex }: Scene['wall'], gaps: readonly Gap[], pen: Pen): string {
	const high = skirtingCm[kind]
	if (high === 0) return ''
	const colour = pen.light.tone(kind === 'clapboard' ? trimOf(hex) : kind === 'brick' ? stoneOf(hex) : darker(hex))
	const edges = [area.left, ...gaps.flatMap(({ from, to }) => [from, to]), area.right]
	return Array.from({ length: edges.length / 2 }, (_, index) => {
		const [from, to] = [edges[index * 2] ?? 0, edges[index * 2 + 1] ?? 0]
		if (to <= from) return ''
		return (
			rect(from, -high, to - from, high, colour) +
			rect(from, -high - 1.6, to - from, 2.2, shade(colour, 0.04)) +
			line(`M${n(from)} ${n(-high + 0.9)}H${n(to)}`, shade(colour, -0.14), 0.7, 0.7)
		)
	}).join('')
}

const darker = (wall: Hex): Hex => {
	const { l, c, h } = lchOf(wall)
	return hexOf({ l: l - 0.16, c: c * 0.8, h })
}

/** Light from the upper left, and the ground's own shade along the foot. */
function fallOf(area: Area, { defs, light }: Pen): string {
	const strong = light.quarter === 'summer' ? 0.13 : 0.09
	const across = linear(defs, 'slanting', [
		[0, 'white', light.isEvening ? 0.02 : strong],
		[0.55, 'white', 0],
		[0.56, 'black', 0],
		[1, 'black', light.isEvening ? 0.22 : 0.15],
	])
	const foot = linear(defs, 'down', [
		[0, 'black', 0],
		[1, 'black', 0.2],
	])
	return rect(area.left, area.top, widthOf(area), -area.top, across) + rect(area.left, -34, widthOf(area), 34, foot)
}

/** The wall behind it all; `gaps` are kept free of skirting, a shop's glass begins no lower than `sillCm`. */
export function wall(area: Area, of: Scene['wall'], gaps: readonly Gap[], sillCm: number, pen: Pen): string {
	return faceOf(area, of, gaps, sillCm, pen) + skirting(area, of, gaps, pen) + fallOf(area, pen)
}
