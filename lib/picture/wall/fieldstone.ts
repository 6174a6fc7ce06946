import type { Hex } from '../../units/hex'
import { diceOf, wobble } from '../pen/dice-of'
import { n2 } from '../pen/n'
import { fill, type Point, pebble, rect } from '../pen/path'
import type { Pen } from '../pen/pen'
import { hexOf, lchOf, shade } from '../pen/shade'
import type { Area } from './area'
import { highCm, stones, tileCm } from './stones'
import { tiled } from './tile'

const laid = stones()

/** Stones are drawn on a grid of half a centimetre: finer would be seen by nobody and sent to everybody. */
const gridsACm = 2

const onGrid = (corners: readonly Point[], straightShare?: number): string =>
	copies(corners)
		.map((each) =>
			pebble(
				each.map(([x, y]): Point => [x * gridsACm, y * gridsACm]),
				straightShare,
			),
		)
		.join('')

/** A stone that reaches over the tile's edge is drawn on the other side as well. */
function copies(corners: readonly Point[]): Point[][] {
	const [xs, ys] = [corners.map(([x]) => x), corners.map(([, y]) => y)]
	const over = (least: number, most: number, size: number) => [
		0,
		...(least < 0 ? [size] : []),
		...(most > size ? [-size] : []),
	]
	return over(Math.min(...xs), Math.max(...xs), tileCm).flatMap((dx) =>
		over(Math.min(...ys), Math.max(...ys), highCm).map((dy) => corners.map(([x, y]): Point => [x + dx, y + dy])),
	)
}

const outlines = laid.map((corners) => onGrid(corners))

/** Where light falls on a stone: its upper left, drawn small. */
const lit = laid.map((corners) => {
	const x = corners.reduce((sum, [cx]) => sum + cx, 0) / corners.length
	const y = corners.reduce((sum, [, cy]) => sum + cy, 0) / corners.length
	const small = corners.map(([cx, cy]): Point => [x + (cx - x) * 0.66 - 0.8, y + (cy - y) * 0.52 - 1.2])
	return onGrid(small, 0)
})

/** Six kinds of stone about the wall's own colour. */
function kindsOf(colour: Hex): Hex[] {
	const { l, c, h } = lchOf(colour)
	const dice = diceOf('kinds')
	return [-0.06, -0.032, -0.01, 0.014, 0.034, 0.055].map((by) =>
		hexOf({ l: l + by, c: c * (0.75 + dice() * 0.5) + 0.003, h: h + wobble(dice, 26) }),
	)
}

export function fieldstone(area: Area, colour: Hex, pen: Pen): string {
	const mortar = shade(colour, -0.11, 0.6)
	const ofKind = (kind: number, from: readonly string[]) =>
		from.filter((_, index) => (index * 5 + Math.floor(index / 7)) % kinds.length === kind).join('')
	const kinds = kindsOf(colour)
	const laidOut = kinds.map((_, kind) => pen.defs.add((id) => `<path id="${id}" d="${ofKind(kind, outlines)}"/>`))
	const shadow = laidOut.map((id) => `<use href="#${id}"/>`).join('')
	const faces = kinds.map((hex, kind) => `<use href="#${laidOut[kind]}" fill="${hex}"/>`).join('')
	const highlights = kinds.map((hex, kind) => fill(ofKind(kind, lit), shade(hex, 0.028), 0.6)).join('')
	const ground = rect(0, 0, tileCm, highCm, mortar)
	const under = `<g transform="translate(1 2)" fill="${shade(mortar, -0.09)}" opacity=".8">${shadow}</g>`
	const wall = `<g transform="scale(${n2(1 / gridsACm)})">${under}${faces}${highlights}</g>`
	return tiled(area, [tileCm, highCm], ground + wall, pen)
}
