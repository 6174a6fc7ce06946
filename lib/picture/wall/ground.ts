import type { WallKind } from '../../container/site'
import type { Hex } from '../../units/hex'
import { diceOf, wobble } from '../pen/dice-of'
import { linear } from '../pen/gradient'
import { n } from '../pen/n'
import { fill, line, rect, straight } from '../pen/path'
import type { Pen } from '../pen/pen'
import { hexOf, lchOf, shade } from '../pen/shade'
import { type Area, widthOf } from './area'

/** Slabs by kind of wall: how light, how warm (hue), how long in cm. */
const laid: Record<WallKind, { readonly l: number; readonly h: number; readonly slabCm: number }> = {
	clapboard: { l: 0.74, h: 95, slabCm: 62 },
	fieldstone: { l: 0.7, h: 70, slabCm: 74 },
	stucco: { l: 0.76, h: 60, slabCm: 52 },
	brick: { l: 0.71, h: 85, slabCm: 58 },
	'shop glass': { l: 0.7, h: 200, slabCm: 66 },
}

/** Joints that run away from the viewer spread a little, as they do to the eye. */
const spread = 0.35

const paving = (kind: WallKind, wall: Hex): Hex => {
	const { l, h } = laid[kind]
	return hexOf({ l, c: 0.012 + lchOf(wall).c * 0.05, h })
}

/** Slabs before the wall, in rows that grow towards the viewer. */
export function ground(area: Area, kind: WallKind, wall: Hex, pen: Pen): string {
	const colour = pen.light.tone(paving(kind, wall))
	const depth = area.bottom
	const dice = diceOf(`ground ${kind}`)
	const { slabCm } = laid[kind]
	const rows = [0, 0.26, 0.62, 1].map((share) => share * Math.max(depth, 34))
	const reach = Math.ceil(Math.max(-area.left, area.right) / slabCm) + 1
	const x = (at: number, y: number) => at * slabCm * (1 + (spread * y) / 60)
	const slabs: string[] = []
	let joints = ''
	rows.slice(0, -1).forEach((from, row) => {
		const to = rows[row + 1] ?? depth
		for (let at = -reach; at < reach; at++) {
			const left = at + (row % 2) / 2
			joints += straight([
				[x(left, from), from],
				[x(left, to), to],
			])
			const tint = wobble(dice, 0.035)
			if (Math.abs(tint) < 0.008) continue
			const corners = straight([
				[x(left, from), from],
				[x(left + 1, from), from],
				[x(left + 1, to), to],
				[x(left, to), to],
			])
			slabs.push(fill(`${corners}Z`, shade(colour, tint)))
		}
		joints += `M${n(area.left)} ${n(to)}H${n(area.right)}`
	})
	const nearer = linear(pen.defs, 'down', [
		[0, 'black', 0.2],
		[0.35, 'black', 0.03],
		[1, 'white', 0.06],
	])
	return (
		rect(area.left, 0, widthOf(area), depth, colour) +
		slabs.join('') +
		line(joints, shade(colour, -0.12), 0.5, 0.8) +
		rect(area.left, 0, widthOf(area), depth, nearer)
	)
}
