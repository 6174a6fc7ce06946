import { between, diceOf, wobble } from '../pen/dice-of'
import { clamp } from '../pen/n'
import type { Dice } from '../piece'
import type { SceneLine } from '../scene'
import { type Bed, onPaper } from './bed'
import { seedOf } from './drawn-once'
import type { Hand } from './hand'
import type { Sprig } from './sprig'
import { type Cut, stockOf } from './stock'

/** So many of a line hang over the near rim at most. */
export const mostSpillers = 16

/** Of those round a rim that is seen from all sides a little more than half face the viewer. */
function facing({ count }: SceneLine, { stands, isLong }: Bed): number {
	const share = stands === 'all round' && !isLong ? 0.75 : 1
	return clamp(Math.round(count * share), 1, mostSpillers)
}

/** Round the near rim from its right end (0) to its left (1). */
function onRim(along: number, bed: Bed): { u: number; v: number } {
	if (!bed.isLong) {
		const turn = (along * 1.16 - 0.08) * Math.PI
		return { u: Math.cos(turn), v: Math.sin(turn) }
	}
	const u = 1 - along * 2
	return { u, v: Math.abs(u) > 0.93 ? 0.5 : 1 }
}

function lengthOf({ lengthCm }: SceneLine, { height, halfWidth, hangs }: Bed): number {
	const usual = clamp(halfWidth * 1.1, 15, 40)
	const wanted = lengthCm === null || !(lengthCm > 0) ? usual : lengthCm * 0.8
	return hangs ? wanted : Math.min(wanted, height * 0.82 + 6)
}

/** A frond bends outwards and down: towards the sides at the ends of the rim, to and fro before its middle. */
function bent(side: number, index: number, dice: Dice): number {
	const across = side * 0.85 + (index % 2 === 0 ? 0.34 : -0.34) * (1 - Math.abs(side)) + wobble(dice, 0.16)
	const down = 0.5 + 0.34 * (1 - Math.abs(side)) + wobble(dice, 0.14)
	return (Math.atan2(across, -down) * 180) / Math.PI
}

type Spot = { readonly u: number; readonly v: number; readonly index: number }

/** How far a spot lies to the side, −1 to 1; along a long rim only its ends do. */
const sideOf = (u: number, { isLong }: Bed): number =>
	isLong ? clamp((Math.abs(u) - 0.6) / 0.4, 0, 1) * Math.sign(u) : u

/** Every second one lies over its neighbours, and is shorter. */
const isUpper = (index: number): boolean => index % 2 === 1

function sprig(line: SceneLine, piece: Cut, { u, v, index }: Spot, bed: Bed, dice: Dice): Sprig {
	const { hangs, leans, heightCm, id } = piece
	const [x, y] = onPaper(bed, u * bed.halfWidth * 0.92, hangs ? 0 : 2, v * bed.halfDepth * 0.92)
	const long = lengthOf(line, bed) * between(dice, 0.85, 1.1) * (isUpper(index) ? 0.8 : 1)
	const scale = long / Math.max(1, heightCm)
	const side = sideOf(u, bed)
	const turn = hangs ? -side * 16 + wobble(dice, 10) : bent(side, index, dice)
	const isLeft = leans ? u > 0 === hangs : dice() < 0.5
	const across = scale * 0.88 * (isLeft ? -1 : 1)
	const near = (isUpper(index) ? 520 : 500) + v * bed.halfDepth
	return { id, x, y, turn, across, along: scale, near, isOver: true }
}

/** What hangs over the near rim. */
export function spillers(line: SceneLine, hand: Hand): Sprig[] {
	const { bed, which } = hand
	const count = facing(line, bed)
	const stock = stockOf(line, [0.01, -0.03], hand)
	const dice = diceOf(`spill ${which} ${seedOf(line)}`)
	const shift = between(dice, -0.3, 0.3)
	return Array.from({ length: count }, (_, index) => {
		const piece = stock[index % stock.length]
		if (piece === undefined) return []
		const along = clamp((index + 0.5 + shift + wobble(dice, 0.38)) / count, 0, 1)
		return [sprig(line, piece, { ...onRim(along, bed), index }, bed, dice)]
	}).flat()
}
