import { between, diceOf, wobble } from '../pen/dice-of'
import { clamp } from '../pen/n'
import type { Dice } from '../piece'
import type { SceneLine } from '../scene'
import { aboveRimCm } from './above-rim'
import { type Bed, roomCm } from './bed'
import { seedOf } from './drawn-once'
import type { Hand } from './hand'
import type { Sprig } from './sprig'
import { stockOf } from './stock'

/** So many stems of a line are drawn at most: more only darken the middle. */
export const mostUprights = 24

/** How far stems lean apart, in degrees, by what they are. */
const leanOf = ({ form }: SceneLine): number => {
	if (form === 'logs') return 5
	if (form === 'evergreen top') return 2
	if (form === 'grass' || form === 'sword leaves') return 10
	return form === 'twisting stems' ? 20 : 17
}

/** Of those that stand along a long bed each has its stretch; in a round one they stand close about the middle. */
function footOf(index: number, count: number, bed: Bed, dice: Dice): readonly [u: number, v: number] {
	const back = bed.stands === 'all round' && !bed.isLong ? wobble(dice, 0.3) : -0.4 + wobble(dice, 0.25)
	if (index === 0 && (!bed.isLong || count % 2 === 1)) return [wobble(dice, 0.04), back]
	if (bed.isLong) return [clamp((((index + 0.5) / count) * 2 - 1) * 0.82 + wobble(dice, 0.6 / count), -0.9, 0.9), back]
	const side = index % 2 === 0 ? 1 : -1
	return [side * between(dice, 0.06, 0.2 + 0.3 * Math.min(1, count / 8)), back]
}

/** The first of a line reaches its full height, the others less the farther they stand from the middle. */
function heightShare(index: number, u: number, { isLong }: Bed, dice: Dice): number {
	if (index === 0) return 1
	return clamp(between(dice, 0.8, 0.99) - Math.abs(u) * (isLong ? 0.22 : 0.18), 0.45, 1)
}

/** The order in which a line is set along a long bed: from the middle outwards, so that the first stands there. */
const outwards = (index: number, count: number): number => {
	const middle = Math.floor((count - 1) / 2)
	const step = Math.ceil(index / 2) * (index % 2 === 0 ? -1 : 1)
	return clamp(middle + step, 0, count - 1)
}

/** What stands up the middle, at its true height. */
export function uprights(line: SceneLine, hand: Hand): Sprig[] {
	const { bed, which } = hand
	const count = clamp(Math.round(line.count), 1, mostUprights)
	const stock = stockOf(line, count > 2 ? [0.015, -0.03, 0] : [0], hand)
	const dice = diceOf(`upright ${which} ${seedOf(line)}`)
	const above = aboveRimCm(line, bed.pot)
	const lean = leanOf(line)
	return Array.from({ length: count }, (_, index) => {
		const [u, v] = footOf(bed.isLong ? outwards(index, count) : index, count, bed, dice)
		const piece = stock[(index + Math.floor(dice() * 2)) % stock.length] ?? stock[0]
		if (piece === undefined) return []
		const share = heightShare(index, u, bed, dice)
		const turn = index === 0 ? 0 : clamp(u * 2.1, -1, 1) * lean + wobble(dice, lean * 0.35)
		const tip = above * share
		const long = piece.heightCm * Math.cos((turn * Math.PI) / 180)
		const isLeft = piece.leans ? u < 0 : dice() < 0.5
		const { scale, sunk } = footed(tip, long, bed, roomCm(bed.pot, u * bed.halfWidth))
		return {
			id: piece.id,
			x: u * bed.halfWidth,
			y: bed.rimY + sunk,
			turn,
			across: isLeft ? -scale : scale,
			along: scale,
			near: v * bed.halfDepth - tip * 0.02,
			isOver: false,
		}
	}).flat()
}

/** A stem keeps its natural size as long as its foot finds room in the pot; a longer or shorter one is drawn to fit. */
function footed(tip: number, long: number, { headspace, height }: Bed, room: number): { scale: number; sunk: number } {
	const sunk = Math.min(clamp(long - tip, headspace * 0.6, height * 0.8), room)
	return { scale: (tip + sunk) / long, sunk }
}
