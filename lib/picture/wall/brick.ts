import type { Hex } from '../../units/hex'
import { between, diceOf, pick, wobble } from '../pen/dice-of'
import { n } from '../pen/n'
import { fill, rect } from '../pen/path'
import type { Pen } from '../pen/pen'
import { hexOf, lchOf, shade } from '../pen/shade'
import type { Area } from './area'
import { tiled } from './tile'

/** A modular brick with its joint, in cm: eight inches by two and two thirds. */
const [lengthCm, courseCm] = [20.32, 6.773]
const [across, up] = [9, 12]
const jointCm = 0.95

const mortarOf = (colour: Hex): Hex => {
	const { l, c, h } = lchOf(colour)
	return hexOf({ l: l > 0.75 ? l - 0.12 : l + (0.8 - l) * 0.42, c: c * 0.3, h })
}

/** Kiln colours: as many bricks of each as its place in the list says. */
const kilns = [0, 0, 0, 0.025, 0.025, -0.03, -0.03, 0.05, -0.07] as const

function bricks(seed: string): Map<number, string> {
	const dice = diceOf(seed)
	const drawn = new Map<number, string>()
	for (let row = 0; row < up; row++)
		for (let at = 0; at < across; at++) {
			const x = at * lengthCm + (row % 2 === 0 ? 0 : -lengthCm / 2) + jointCm / 2 + wobble(dice, 0.15)
			const y = row * courseCm + jointCm / 2 + wobble(dice, 0.12)
			const [wide, high] = [lengthCm - jointCm + wobble(dice, 0.25), courseCm - jointCm]
			const kiln = pick(dice, kilns)
			const d = (left: number) => `M${n(left)} ${n(y)}h${n(wide)}v${n(high)}h${n(-wide)}z`
			const whole = d(x) + (x < 0 ? d(x + across * lengthCm) : '')
			drawn.set(kiln, (drawn.get(kiln) ?? '') + whole)
		}
	return drawn
}

function marks(seed: string): string {
	const dice = diceOf(seed)
	return Array.from({ length: 60 }, () => {
		const [x, y] = [between(dice, 0, across * lengthCm - 4), between(dice, 0, up * courseCm)]
		return `M${n(x)} ${n(y)}h${n(between(dice, 0.4, 2.4))}v.5h${n(-between(dice, 0.4, 1.6))}z`
	}).join('')
}

const laid = bricks('brick')

/** Running bond, each course half a brick on. */
export function brick(area: Area, colour: Hex, pen: Pen): string {
	const size = [across * lengthCm, up * courseCm] as const
	const mortar = mortarOf(colour)
	const all = [...laid.values()].join('')
	const shadow = `<g transform="translate(.25 .4)">${fill(all, shade(mortar, -0.16), 0.7)}</g>`
	const faces = [...laid].map(([by, d]) => fill(d, hexOf({ ...tinted(colour, by) }))).join('')
	const svg =
		rect(0, 0, size[0], size[1], mortar) + shadow + faces + fill(marks('brick marks'), shade(colour, -0.1), 0.35)
	return tiled(area, size, svg, pen)
}

/** Harder burnt bricks are darker, and a little bluer. */
function tinted(colour: Hex, by: number) {
	const { l, c, h } = lchOf(colour)
	return { l: l + by, c: c * (1 + by * 2), h: h - by * -60 }
}
