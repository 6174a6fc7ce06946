import type { Hex } from '../../../units/hex'
import type { Dice, DrawPiece } from '../../piece'
import { thread } from '../growth/band'
import { drop } from '../growth/leaf'
import { alternate, roll, side, times } from '../growth/roll'
import { size } from '../growth/size'
import { type Spot, spotAt, walk } from '../growth/walk'
import { drawn } from '../ink/drawn'
import { fill, type Layer, pen } from '../ink/layer'
import { ahead } from '../ink/point'
import type { Line } from '../ink/shape'
import { type Tones, tones } from '../ink/tones'
import { type Hung, less, lobed, veins } from './lobed'

/** Leaves to both sides of what hangs, turned down by their weight, smaller towards its end. */
const leavesOf = (vine: readonly Spot[], count: number, leafCm: number, dice: Dice): Hung[] =>
	times(count, (t, index) => {
		const { at, heading } = spotAt(vine, 0.08 + 0.92 * t)
		const out = heading + side(index) * roll(dice, 0.6, 1)
		const down = Math.sign(out) * Math.PI
		const lengthCm = leafCm * (1.15 - 0.55 * t) * roll(dice, 0.88, 1.1)
		return { stalk: ahead(at, out, leafCm * 0.12), heading: out + (down - out) * 0.34, lengthCm }
	})

/** Ivy: lobed leaves with pale veins, or with an edge in the second colour. */
function ivy(of: Tones, edge: Hex | null, leaves: readonly Hung[]): Layer[] {
	const [front, back] = alternate(leaves)
	if (edge === null)
		return [
			fill(of.dark, back.map(lobed)),
			fill(of.base, front.map(lobed)),
			pen(of.light, (front[0]?.lengthCm ?? 0) * 0.04, front.flatMap(veins)),
		]
	const hearts = (all: readonly Hung[]) => all.map((each) => lobed(less(each, 0.76)))
	return [
		fill(edge, back.map(lobed)),
		fill(of.dark, hearts(back)),
		fill(edge, front.map(lobed)),
		fill(of.base, hearts(front)),
	]
}

/** Round leaves on threads: eucalyptus, creeping Jenny. */
function strands(of: Tones, leaves: readonly Hung[]): Layer[] {
	const round = ({ stalk, heading, lengthCm }: Hung): Line => drop(stalk, heading, lengthCm, lengthCm * 0.92)
	const third = (which: number) => leaves.filter((_, index) => index % 3 === which)
	const shaded = third(2).map((each) => ({ ...less(each, 0.7), heading: each.heading + 0.25 }))
	return [
		fill(of.dark, third(0).map(round)),
		fill(of.base, third(1).map(round)),
		fill(of.light, third(2).map(round)),
		fill(of.base, shaded.map(round)),
	]
}

type Fall = { readonly lengthCm: number; readonly acrossCm: number; readonly isFirst: boolean }

/** Over the rim and down; `to` is the side, from -1 to 1. */
const vine = (to: number, { lengthCm, acrossCm, isFirst }: Fall, dice: Dice): readonly Spot[] =>
	walk({
		from: [to * acrossCm * 0.1, 0],
		heading: Math.PI - to * Math.min(1.5, 0.5 + (acrossCm / lengthCm) * 1.3),
		lengthCm: lengthCm * (isFirst ? 1.06 : roll(dice, 0.66, 0.92)),
		legs: 5,
		turn: (t) => to * (acrossCm / lengthCm) * (t < 0.5 ? 0.85 : 0.2) + roll(dice, -0.13, 0.13),
	})

/** Ivy; or strands of round leaves, where it is much narrower or broader than ivy. Hangs: towards +y. */
export const trailing: DrawPiece = (line, dice) => {
	const lengthCm = size(line.lengthCm, 40)
	const acrossCm = size(line.acrossCm, lengthCm * 0.55, lengthCm * 0.2, lengthCm * 1.2)
	const of = tones(line.hex)
	const isIvy = acrossCm > lengthCm * 0.4 && acrossCm < lengthCm * 0.68
	const leafCm = Math.min(isIvy ? 7.5 : 4.2, lengthCm * (isIvy ? 0.15 : 0.085))
	const sides = isIvy ? [-0.85, 0.05, 0.9] : [-0.9, -0.3, 0.3, 0.9]
	return times(3, (_, variant) => {
		const vines = sides.map((to, index) => vine(to, { lengthCm, acrossCm, isFirst: (index + variant) % 3 === 0 }, dice))
		const leaves = vines.flatMap((each) => leavesOf(each, isIvy ? 7 : 16, leafCm, dice))
		const layers = isIvy ? ivy(of, line.secondHex, leaves) : strands(of, leaves)
		return drawn([pen(of.deep, leafCm * 0.07, vines.map(thread)), ...layers], { habit: 'hangs', fitCm: lengthCm })
	})
}
