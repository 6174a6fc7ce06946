import { between, diceOf, wobble } from '../pen/dice-of'
import { clamp } from '../pen/n'
import type { Dice } from '../piece'
import type { SceneLine } from '../scene'
import { aboveSoilCm } from './above-rim'
import { type Bed, onPaper } from './bed'
import { type Place, placesIn, seenAs, wayOf } from './dome'
import { seedOf } from './drawn-once'
import { habitOf } from './habit'
import type { Hand } from './hand'
import type { Sprig } from './sprig'
import { type Cut, stockOf } from './stock'

/** So many tips are drawn in one pot at most; beyond that they only hide one another. */
export const mostGreens = 46

/** Short tips are pushed in less deeply than tall stems: so much of them shows at least (common practice, no published source). */
const leastShown = 0.74

/** What shows of a cut green, in cm. */
export function greenCm(line: SceneLine, bed: Bed): number {
	const shown = aboveSoilCm(line, bed.pot)
	if (shown === null || line.lengthCm === null) return clamp(bed.halfWidth * 1.25, 18, 45)
	return Math.max(6, shown, line.lengthCm * leastShown)
}

/** Whose turn it is at each of `total` places, so that kinds mix evenly (largest remainder, place by place). */
function turns(counts: readonly number[]): number[] {
	const total = counts.reduce((sum, count) => sum + count, 0)
	const owed = counts.map(() => 0)
	return Array.from({ length: total }, () => {
		counts.forEach((count, which) => {
			owed[which] = (owed[which] ?? 0) + count / total
		})
		const next = owed.indexOf(Math.max(...owed))
		owed[next] = (owed[next] ?? 0) - 1
		return next
	})
}

/** Counts as drawn: true as long as they are few enough to be seen. */
function drawnCounts(lines: readonly SceneLine[]): number[] {
	const counts = lines.map(({ count }) => Math.max(1, Math.round(count)))
	const total = counts.reduce((sum, count) => sum + count, 0)
	if (total <= mostGreens) return counts
	return counts.map((count) => Math.max(1, Math.round((count * mostGreens) / total)))
}

const leanOf = (line: SceneLine): number => (habitOf(line) === 'standing' ? 30 : 90)

function sprig(line: SceneLine, place: Place, stock: readonly Cut[], bed: Bed, dice: Dice): Sprig | undefined {
	const out = Math.hypot(...place.to)
	const piece = stock[Math.floor(dice() * stock.length)]
	if (piece === undefined) return undefined
	const way = wayOf(place, leanOf(line))
	const { turn, share } = seenAs(way)
	const long = greenCm(line, bed) * between(dice, 0.88, 1.12) * (1 - 0.16 * out)
	const isStanding = habitOf(line) === 'standing'
	const isOver = !isStanding && place.v > 0.1 && out > 0.45
	const [x, y] = onPaper(
		bed,
		place.u * bed.halfWidth * (isStanding ? 0.55 : isOver ? 0.86 : 0.7),
		isOver ? 0 : -bed.headspace * 0.5,
		place.v * bed.halfDepth * (isOver ? 0.9 : 0.7),
	)
	const scale = long / piece.heightCm
	const isMirrored = piece.leans ? turn < 0 : dice() < 0.5
	return {
		id: piece.id,
		x,
		y,
		turn: turn + wobble(dice, 9),
		across: (isMirrored ? -1 : 1) * scale * between(dice, 0.92, 1.08),
		along: scale * clamp(share, 0.52, 1),
		near: place.v * bed.halfDepth + way[2] * long - way[1] * 6,
		isOver,
	}
}

/** Greens fanned over the whole bed, kinds mixed: upright in the middle, outwards and forward towards the rim. */
export function greens(lines: readonly SceneLine[], hand: Hand): Sprig[] {
	const { bed, which } = hand
	if (lines.length === 0) return []
	const counts = drawnCounts(lines)
	const order = turns(counts)
	const dice = diceOf(`greens ${which} ${lines.map(seedOf).join()}`)
	const stocks = lines.map((line) => stockOf(line, [0.012, -0.035], hand))
	return placesIn(bed, order.length, dice).flatMap((place, index) => {
		const kind = order[index] ?? 0
		const [line, stock] = [lines[kind], stocks[kind]]
		if (line === undefined || stock === undefined) return []
		return sprig(line, place, stock, bed, dice) ?? []
	})
}
