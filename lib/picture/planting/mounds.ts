import { between, diceOf, wobble } from '../pen/dice-of'
import { clamp } from '../pen/n'
import type { Dice } from '../piece'
import type { SceneLine } from '../scene'
import { type Bed, onPaper } from './bed'
import { type Place, placesIn } from './dome'
import { seedOf } from './drawn-once'
import type { Hand } from './hand'
import type { Sprig } from './sprig'
import { type Cut, stockOf } from './stock'

/** So many plants are drawn in one pot at most. */
export const mostPlants = 30

const heightOf = (line: SceneLine | undefined): number => line?.lengthCm ?? 28

/** Which line stands at each place, tall ones behind low ones with a little give, so that none hides the others. */
function setOut(lines: readonly SceneLine[], places: readonly Place[], dice: Dice): number[] {
	const whole = lines.flatMap(({ count }, which) => {
		const plants = Math.max(1, Math.round(count))
		return Array.from({ length: plants }, (_, index) => ({ which, at: (index + 0.5) / plants }))
	})
	const chosen = whole.toSorted((a, b) => a.at - b.at || a.which - b.which).slice(0, places.length)
	const tallFirst = chosen
		.map(({ which }) => ({ which, rank: heightOf(lines[which]) * between(dice, 0.55, 1.45) }))
		.toSorted((a, b) => b.rank - a.rank)
	const backFirst = places.map(({ v }, index) => ({ index, v })).toSorted((a, b) => a.v - b.v)
	const set: number[] = []
	backFirst.forEach(({ index }, rank) => {
		set[index] = tallFirst[rank]?.which ?? 0
	})
	return set
}

/** Where something tall stands in the middle, plants make room for it. */
function apart({ u, v }: Place, hasMiddle: boolean, { isLong }: Bed): readonly [number, number] {
	const out = Math.hypot(u, v) || 0.01
	const pushed = hasMiddle && !isLong ? 0.42 + 0.58 * out : out
	return [(u / out) * pushed * 0.86, (v / out) * pushed * 0.86]
}

function plant(line: SceneLine, piece: Cut, place: readonly [number, number], bed: Bed, dice: Dice): Sprig {
	const [u, v] = place
	const isOver = v > 0.15
	const [x, y] = onPaper(bed, u * bed.halfWidth, isOver ? -1 : -bed.headspace * 0.6, v * bed.halfDepth)
	const grown = line.lengthCm === null || piece.heightCm <= 0 ? 1 : clamp(line.lengthCm / piece.heightCm, 0.5, 1.6)
	const scale = between(dice, 0.84, 1.08) * grown
	return {
		id: piece.id,
		x,
		y,
		turn: clamp(u * 26 + wobble(dice, 7), -40, 40),
		across: (dice() < 0.5 ? -1 : 1) * scale,
		along: scale * (1 - 0.14 * Math.max(0, v)),
		near: v * bed.halfDepth,
		isOver,
	}
}

/** Plants that fill the bed, each a mound of its own. */
export function mounds(lines: readonly SceneLine[], hasMiddle: boolean, hand: Hand): Sprig[] {
	const { bed, which } = hand
	const count = lines.reduce((sum, line) => sum + Math.max(1, Math.round(line.count)), 0)
	const dice = diceOf(`mounds ${which} ${lines.map(seedOf).join()}`)
	const stocks = lines.map((line) => stockOf(line, [0.01, -0.035], hand))
	const places = placesIn(bed, Math.min(mostPlants, count), dice)
	const set = setOut(lines, places, dice)
	return places.flatMap((place, index) => {
		const kind = set[index] ?? 0
		const [line, stock = []] = [lines[kind], stocks[kind]]
		const piece = stock[place.v < -0.1 ? 1 : 0] ?? stock[0]
		if (line === undefined || piece === undefined) return []
		return plant(line, piece, apart(place, hasMiddle, bed), bed, dice)
	})
}
