import type { Form } from '../../recipe/look'
import { nearestOdd } from '../../units/round'
import { between, diceOf, wobble } from '../pen/dice-of'
import type { Dice } from '../piece'
import type { SceneLine } from '../scene'
import type { Bed } from './bed'
import { endOf, type Place, seenAs, type Way, wayOf } from './dome'
import { seedOf } from './drawn-once'
import type { Hand } from './hand'
import type { Sprig } from './sprig'
import { type Cut, stockOf } from './stock'

/** So many of a line are set on the face that is seen, at most; along a long box, at most. */
export const mostAccents = { round: 7, long: 11 } as const

/** Of three or four faces one is seen whole, and the edges of two. */
const seenShare = 0.45

/** All of those on a face that is seen; of those about a pot that is seen all round what the near side shows, odd. */
export function facing({ count }: SceneLine, { stands, isLong }: Bed): number {
	const whole = Math.max(1, Math.round(count))
	const seen = stands === 'all round' && !isLong ? nearestOdd(whole * seenShare) : whole
	return Math.min(seen, isLong ? mostAccents.long : mostAccents.round)
}

/** Where on the face a form belongs: how far it lies towards the rim (0 to 1), and how far from the middle. */
const region: Partial<Record<Form, { readonly low: number; readonly high: number; readonly aside: number }>> = {
	cluster: { low: 0.98, high: 0.66, aside: 0.82 },
	ribbon: { low: 0.95, high: 0.85, aside: 0.4 },
	pumpkin: { low: 1, high: 0.86, aside: 0.75 },
	berries: { low: 0.95, high: 0.4, aside: 0.85 },
	cone: { low: 1, high: 0.55, aside: 0.85 },
	pod: { low: 0.95, high: 0.45, aside: 0.8 },
}
const anywhere = { low: 0.96, high: 0.5, aside: 0.75 }

/** What a piece takes up on paper, as a circle. */
type Spot = { readonly x: number; readonly y: number; readonly r: number; readonly form: Form }

type Candidate = { readonly place: Place; readonly x: number; readonly y: number; readonly way: Way }

function candidate(form: Form, bed: Bed, reachCm: number, dice: Dice): Candidate {
	const { low, high, aside } = region[form] ?? anywhere
	const out = between(dice, high, low)
	const spread = bed.isLong ? 1 : aside
	const across = between(dice, -1, 1) * spread
	const near = Math.sqrt(Math.max(0.1, 1 - across * across))
	const to = bed.isLong ? ([across * 0.3, out] as const) : ([across * out, near * out] as const)
	const place: Place = { u: bed.isLong ? across * 0.94 : across * out, v: 0.9 * out, to }
	const way = wayOf(place, 84)
	const [x, y] = endOf(bed, place, way, reachCm)
	return { place, x, y, way }
}

/** How much room a candidate has: to others a little more than their sizes, to its own kind clearly more. */
function roomAt({ x, y }: Candidate, r: number, form: Form, taken: readonly Spot[]): number {
	const gaps = taken.map((spot) => {
		const touching = (spot.r + r) * (spot.form === form ? 1.6 : 0.95)
		return Math.hypot(spot.x - x, (spot.y - y) * 1.2) / touching
	})
	return Math.min(1.6, ...gaps)
}

const turnOf = (form: Form, way: Way, dice: Dice): number => {
	if (form === 'ribbon' || form === 'pumpkin') return wobble(dice, 7)
	if (form === 'globe' || form === 'cluster') return wobble(dice, 16)
	const { turn } = seenAs(way)
	return form === 'cone' ? turn * 0.5 + wobble(dice, 40) : turn * 0.8 + wobble(dice, 22)
}

/** What is compact lies upon the greens and shades them; what stands on a stalk does not. */
const compact: ReadonlySet<Form> = new Set(['globe', 'cluster', 'cone', 'pumpkin'])

const shadeUnder = (form: Form, { widthCm, heightCm }: Cut, scale: number): number =>
	compact.has(form) ? Math.min(widthCm, heightCm) * 0.5 * scale : 0

/** What is largest chooses its place first. */
const largeFirst: readonly Form[] = ['ribbon', 'pumpkin', 'cluster', 'globe', 'cone']

/** Small things bear to be alike: their drawings have so much of the room of a line. */
const accentShare = 0.6

export type SetAccent = Sprig & { readonly shadowCm: number }

/** Ornaments, berries and cones upon the face of the planting, in odd numbers and never one over another. */
export function accents(lines: readonly SceneLine[], reachCm: number, hand: Hand): SetAccent[] {
	const { bed, which, room } = hand
	const taken: Spot[] = []
	const first = (line: SceneLine) => largeFirst.indexOf(line.form) + 1 || largeFirst.length + 1
	return lines
		.toSorted((a, b) => first(a) - first(b))
		.flatMap((line) => {
			const stock = stockOf(line, facing(line, bed) > 1 ? [0.01, -0.015] : [0], { ...hand, room: room * accentShare })
			const dice = diceOf(`accent ${which} ${seedOf(line)}`)
			return Array.from({ length: facing(line, bed) }, (_, index): SetAccent | [] => {
				const piece = stock[index % stock.length]
				if (piece === undefined) return []
				const scale = between(dice, 0.93, 1.07)
				const r = (Math.min(piece.widthCm, piece.heightCm) / 2) * scale
				const tries = Array.from({ length: 18 }, () => candidate(line.form, bed, reachCm, dice))
				const rooms = tries.map((each) => roomAt(each, r, line.form, taken))
				const best = tries[rooms.indexOf(Math.max(...rooms))]
				if (best === undefined) return []
				taken.push({ x: best.x, y: best.y, r, form: line.form })
				const turn = turnOf(line.form, best.way, dice)
				const back = (piece.heightCm * scale) / 2
				const angle = (turn * Math.PI) / 180
				return {
					id: piece.id,
					x: best.x - Math.sin(angle) * back,
					y: best.y + Math.cos(angle) * back,
					turn,
					across: piece.leans && turn < 0 ? -scale : scale,
					along: scale,
					near: 900 - best.y * -0.1,
					isOver: true,
					shadowCm: shadeUnder(line.form, piece, scale),
				}
			}).flat()
		})
}
