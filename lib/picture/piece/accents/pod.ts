import type { Dice, DrawPiece } from '../../piece'
import { limb } from '../growth/band'
import { roll, times } from '../growth/roll'
import { size } from '../growth/size'
import { spotAt, walk } from '../growth/walk'
import { drawn } from '../ink/drawn'
import { fill, type Layer, pen } from '../ink/layer'
import { ahead, type Point } from '../ink/point'
import { closed, dot, line, oval } from '../ink/shape'
import { type Tones, tones } from '../ink/tones'

const holes = [
	[-0.62, 0.05],
	[-0.3, -0.5],
	[0.28, -0.52],
	[0.64, 0],
	[0.02, 0.02],
	[-0.32, 0.55],
	[0.36, 0.52],
] as const

/** Points of a head on its stem: `u` to the right in half widths, `v` up in widths, both turned with the stem. */
type Head = (u: number, v: number) => Point

/** A lotus pod: a funnel whose flat lid shows the holes of its seeds. */
function funnel(of: Tones, at: Head, acrossCm: number, turned: number): Layer[] {
	const lid = acrossCm * 0.42
	return [
		fill(of.base, [
			closed(
				at(-0.14, -0.02),
				[at(-0.34, 0.28), at(-0.94, 0.34), at(-1, 0.62)],
				[at(1, 0.62)],
				[at(0.94, 0.34), at(0.34, 0.28), at(0.14, -0.02)],
			),
		]),
		fill(of.dark, [
			closed(
				at(0.02, -0.02),
				[at(0.16, 0.3), at(0.42, 0.34), at(0.46, 0.62)],
				[at(1, 0.62)],
				[at(0.94, 0.34), at(0.34, 0.28), at(0.14, -0.02)],
			),
		]),
		pen(of.dark, acrossCm * 0.018, [
			line(at(-0.16, 0.1), [at(-0.3, 0.3), at(-0.62, 0.42)]),
			line(at(-0.05, 0.1), [at(-0.1, 0.3), at(-0.2, 0.4)]),
		]),
		fill(of.dark, [oval(at(0, 0.62), acrossCm, lid, turned)]),
		fill(of.light, [oval(at(0, 0.632), acrossCm * 0.93, lid * 0.88, turned)]),
		pen(
			of.base,
			acrossCm * 0.14,
			holes.map(([u, v]) => dot(at(u * 0.9, 0.63 - v * 0.2))),
		),
		pen(
			of.deep,
			acrossCm * 0.095,
			holes.map(([u, v]) => dot(at(u * 0.9, 0.625 - v * 0.2))),
		),
	]
}

/** A poppy's capsule with its crown. */
function capsule(of: Tones, at: Head, acrossCm: number, turned: number): Layer[] {
	return [
		fill(of.base, [oval(at(0, 0.56), acrossCm, acrossCm * 1.16, turned)]),
		fill(of.dark, [
			closed(at(0.1, -0.02), [at(0.72, 0.5), at(0.2, 1.13)], [at(1, 1.1), at(1, 0.56)], [at(1, 0.02), at(0.1, -0.02)]),
		]),
		pen(of.light, acrossCm * 0.07, [line(at(-0.45, 0.94), [at(-0.8, 0.56), at(-0.45, 0.18)])]),
		fill(of.dark, [
			closed(
				at(-0.85, 1.3),
				[at(-0.3, 1), at(0.3, 1), at(0.85, 1.3)],
				[at(0.45, 1.24)],
				[at(0.2, 1.36)],
				[at(-0.1, 1.24)],
				[at(-0.4, 1.35)],
				[at(-0.5, 1.24)],
			),
		]),
	]
}

function stalked(of: Tones, lengthCm: number, acrossCm: number, dice: Dice): Layer[] {
	const lean = roll(dice, -0.2, 0.2)
	const isPoppy = acrossCm < 5
	const stemCm = lengthCm - acrossCm * (isPoppy ? 1.25 : 0.78)
	const stem = walk({ from: [0, 0], heading: -lean * 0.6, lengthCm: stemCm, legs: 4, turn: () => lean * 0.4 })
	const top = spotAt(stem, 1)
	const at: Head = (u, v) =>
		ahead(ahead(top.at, top.heading, acrossCm * v), top.heading + Math.PI / 2, (acrossCm / 2) * u)
	return [
		fill(of.dark, [limb(stem, acrossCm * 0.07 + 0.12, acrossCm * 0.06 + 0.08)]),
		...(isPoppy ? capsule(of, at, acrossCm, top.heading) : funnel(of, at, acrossCm, top.heading)),
	]
}

/** A dried pod on its stem: lotus from 5 cm across, poppy below. */
export const pod: DrawPiece = (line_, dice) => {
	const lengthCm = size(line_.lengthCm, 30)
	const acrossCm = Math.min(lengthCm * 0.7, size(line_.acrossCm, 10, 1, 30))
	return times(3, () => drawn(stalked(tones(line_.hex), lengthCm, acrossCm, dice), { fitCm: lengthCm }))
}
